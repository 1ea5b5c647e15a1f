/* How long planTrip takes: median, fastest and slowest over seeded instances of two sizes. */
import { defaultSettings } from '../../src/lib/planning/model/settings.ts';
import { planTrip } from '../../src/lib/planning/plan-trip.ts';
import { instance, type Size } from './instances.ts';

const SIZES: readonly Size[] = [
  { eaters: 4, days: 5, lots: 60 },
  { eaters: 12, days: 14, lots: 500 },
];
const SEEDS = 10;
const RUNS_PER_SEED = 5;

const settings = defaultSettings();
for (const size of SIZES) {
  const instances = Array.from({ length: SEEDS }, (_, seed) => instance(size, seed + 1));
  const first = instances[0]!;
  planTrip(first.trip, first.stock, settings); // once, so that the compiler has seen the code

  const times: number[] = [];
  let eatenKcal = 0;
  let targetKcal = 0;
  for (const { trip, stock } of instances)
    for (let run = 0; run < RUNS_PER_SEED; run++) {
      const start = performance.now();
      const { totals } = planTrip(trip, stock, settings);
      times.push(performance.now() - start);
      eatenKcal += totals.eatenKcal;
      targetKcal += totals.targetKcal;
    }
  times.sort((a, b) => a - b);
  const ms = (at: number) =>
    `${times[Math.min(times.length - 1, Math.floor(times.length * at))]!.toFixed(1)} ms`;
  console.log(
    `planTrip, ${size.eaters} eaters × ${size.days} days × ${size.lots} lots: median ${ms(0.5)}, fastest ${ms(0)}, slowest ${ms(1)}` +
      ` (${times.length} runs over ${SEEDS} instances; ${((100 * eatenKcal) / targetKcal).toFixed(0)} % of the energy found)`,
  );
}
