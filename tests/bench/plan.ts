/*
 * How long planTrip takes: median, fastest and slowest over seeded instances. Each is planned from nothing, first expired, first out, and with its menu listed, as
 * it is whenever somebody opens a page of it. The second is the whole plan without a choice of meals, and has a limit: 100 ms for 12 people and 14 days, 400 ms for
 * 2 people, 90 days and eight stages.
 */
import { keepMenu } from '../../src/lib/planning/menu/edit-menu.ts';
import { defaultSettings } from '../../src/lib/planning/model/settings.ts';
import type { Stock } from '../../src/lib/planning/model/pouch-lot.ts';
import { Trip } from '../../src/lib/planning/model/trip.ts';
import { planTrip } from '../../src/lib/planning/plan-trip.ts';
import { instance, type Size } from './instances.ts';

const SIZES: readonly (Size & { readonly stages: number; readonly limitMs?: number })[] = [
  { eaters: 4, days: 5, lots: 60, stages: 1 },
  { eaters: 12, days: 14, lots: 500, stages: 1, limitMs: 100 },
  { eaters: 2, days: 90, lots: 500, stages: 8, limitMs: 400 },
];
const SEEDS = 5;
const RUNS_PER_SEED = 5;

const settings = defaultSettings();

/** The same trip with boxes at even distances. */
const inStages = (trip: Trip, stages: number): Trip =>
  Trip.parse({
    ...trip,
    resupplies: Array.from({ length: stages - 1 }, (_, index) => ({
      place: `place ${index + 1}`,
      kind: 'box',
      day: Math.round(((index + 1) * trip.dayCount) / stages),
    })),
  });

function timed(trips: readonly { readonly trip: Trip; readonly stock: Stock }[]): number[] {
  return trips
    .flatMap(({ trip, stock }) =>
      Array.from({ length: RUNS_PER_SEED }, () => {
        const start = performance.now();
        planTrip(trip, stock, settings);
        return performance.now() - start;
      }),
    )
    .sort((a, b) => a - b);
}

for (const { stages, limitMs, ...size } of SIZES) {
  const bare = Array.from({ length: SEEDS }, (_, seed) => {
    const { trip, stock } = instance(size, seed + 1);
    return { trip: inStages(trip, stages), stock };
  });
  const plans = bare.map(({ trip, stock }) => planTrip(trip, stock, settings)); // and the compiler has seen the code
  const listed = bare.map(({ trip, stock }, index) => ({ trip: keepMenu(trip, plans[index]!.menu), stock }));
  const share =
    plans.reduce((sum, { totals }) => sum + totals.eatenKcal, 0) /
    plans.reduce((sum, { totals }) => sum + totals.targetKcal, 0);
  console.log(
    `planTrip, ${size.eaters} eaters × ${size.days} days × ${size.lots} lots, ${stages} ${stages === 1 ? 'stage' : 'stages'}; ${(100 * share).toFixed(0)} % of the energy found`,
  );
  for (const [what, trips] of [
    ['meals chosen', bare],
    ['menu listed ', listed],
  ] as const) {
    const times = timed(trips);
    const ms = (at: number) =>
      `${times[Math.min(times.length - 1, Math.floor(times.length * at))]!.toFixed(1)} ms`;
    const limit = what !== 'meals chosen' && limitMs !== undefined ? `, limit ${limitMs} ms` : '';
    console.log(
      `  ${what}: median ${ms(0.5)}, fastest ${ms(0)}, slowest ${ms(1)} (${times.length} runs)${limit}`,
    );
  }
}
