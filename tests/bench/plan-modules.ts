/* A full plan with a route and needs from body data, 12 eaters × 14 days × 500 lots: the time of each module of one round, its share, and the whole with its rounds. */
import { sharePacks } from '../../src/lib/planning/carry/share-packs.ts';
import { demandOf } from '../../src/lib/planning/demand/day-demand.ts';
import { heatOfDays } from '../../src/lib/planning/hydration/heat-rests.ts';
import { planWater } from '../../src/lib/planning/hydration/plan-water.ts';
import { firstExpired } from '../../src/lib/planning/menu/first-expired.ts';
import { completeMenu, poseMenu } from '../../src/lib/planning/menu/plan-menu.ts';
import { resolveTrip } from '../../src/lib/planning/model/resolve-trip.ts';
import { defaultSettings } from '../../src/lib/planning/model/settings.ts';
import { Trip } from '../../src/lib/planning/model/trip.ts';
import { planTrip } from '../../src/lib/planning/plan-trip.ts';
import { knownDays, knownLegs, plannedLegs } from '../../src/lib/planning/route/trip-legs.ts';
import { findShortfall } from '../../src/lib/planning/shortfall/find-shortfall.ts';
import { mealBurdens } from '../../src/lib/planning/stove/meal-burdens.ts';
import { planFuel } from '../../src/lib/planning/stove/plan-fuel.ts';
import { makeCard } from '../../src/lib/planning/trail-card/make-card.ts';
import { instance } from './instances.ts';

const RUNS = 15;
const DAYS = 14;
const settings = defaultSettings();
const { trip: plain, stock } = instance({ eaters: 12, days: DAYS, lots: 500 }, 1);

const POINTS = 3000;
const LENGTH_M = 190_000;
const trip = Trip.parse({
  ...plain,
  days: plain.days.map(({ walkingH: _, campAltitudeM: __, campWater: ___, ...day }) => day),
  party: plain.party.map(({ energyKcal: _, ...eater }, index) => ({
    ...eater,
    body: {
      sex: index % 2 ? 'female' : 'male',
      ageY: 25 + 3 * index,
      heightM: 1.6 + 0.02 * index,
      massG: 58_000 + 2500 * index,
    },
  })),
  route: {
    name: 'long ridge',
    profile: Array.from({ length: POINTS }, (_, index) => ({
      distanceM: (LENGTH_M * index) / (POINTS - 1),
      altitudeM: 1400 + 500 * Math.sin(index / 60) + 150 * Math.sin(index / 11),
    })),
    waypoints: Array.from({ length: 38 }, (_, index) => ({
      name: `brook ${index + 1}`,
      distanceM: 5000 * (index + 0.5),
      water: true,
    })),
  },
});

const median = (values: number[]): number => values.sort((a, b) => a - b)[values.length >> 1] ?? 0;
const times = new Map<string, number[]>();
function timed<T>(module: string, work: () => T): T {
  const start = performance.now();
  const result = work();
  times.set(module, [...(times.get(module) ?? []), performance.now() - start]);
  return result;
}

let steps = 0;
for (let run = 0; run < RUNS; run++) {
  const known = timed('route', () => knownLegs(trip));
  const resolved = resolveTrip(trip, knownDays(trip, known));
  const legs = plannedLegs(trip, resolved, known);
  const demand = timed('demand', () => demandOf(resolved, legs, () => 12_000, settings));
  const burdens = timed('burdens', () => mealBurdens(resolved, legs, demand, settings));
  const { menu } = timed('menu', () => {
    const posed = poseMenu(resolved, demand, stock, burdens, settings);
    return completeMenu(resolved, stock, posed, firstExpired.choose(posed.problem), firstExpired.name);
  });
  const heat = heatOfDays(resolved, legs, demand);
  const { water } = timed('hydration', () => planWater(resolved, legs, demand, heat, menu, settings));
  const { fuel } = timed('stove', () => planFuel(resolved, menu, water, settings));
  const { carry } = timed('carry', () => sharePacks(resolved, menu, stock, water, fuel));
  timed('shortfall', () => findShortfall(resolved, demand, menu, stock, settings));
  timed('trail card', () => makeCard(resolved, menu, stock, carry, water, fuel, settings));
  steps = timed('whole plan', () => planTrip(trip, stock, settings)).coupling.steps;
}

const whole = median(times.get('whole plan') ?? []);
const modules = [...times]
  .filter(([module]) => module !== 'whole plan')
  .map(([module, values]) => ({ module, ms: median(values) }));
const oneRound = modules.reduce((sum, { ms }) => sum + ms, 0);
for (const { module, ms } of modules)
  console.log(
    `${module.padEnd(12)} ${ms.toFixed(1).padStart(7)} ms ${((100 * ms) / oneRound).toFixed(0).padStart(4)} % of one round`,
  );
console.log(
  `${'whole plan'.padEnd(12)} ${whole.toFixed(1).padStart(7)} ms in ${steps} rounds, ${(whole / oneRound).toFixed(1)} times one round (medians of ${RUNS})`,
);
