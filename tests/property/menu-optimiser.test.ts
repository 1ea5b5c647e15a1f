import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { firstExpired } from '../../src/lib/planning/menu/first-expired.ts';
import { mayEat } from '../../src/lib/planning/menu/exclusions.ts';
import { defaultSettings } from '../../src/lib/planning/model/settings.ts';
import { boundMenu, boundFromPrices } from '../../src/lib/planning/optimiser/bound-menu.ts';
import { buildMenuModel } from '../../src/lib/planning/optimiser/menu-model.ts';
import { menuProgram, tightened } from '../../src/lib/planning/optimiser/menu-program.ts';
import { MenuTable } from '../../src/lib/planning/optimiser/menu-table.ts';
import { chosenMenu, fromModel } from '../../src/lib/planning/optimiser/place-menu.ts';
import { randomFrom } from '../../src/lib/planning/optimiser/random.ts';
import { brokenRules, scoreMenu } from '../../src/lib/planning/optimiser/score-menu.ts';
import { poseMenuProblem } from '../../src/lib/planning/pose-menu-problem.ts';
import { highsSolver } from '../../src/lib/menu-search/highs-solver.ts';
import { stocks, trips } from '../support/arbitraries.ts';
import { menuModels, menuProblems, menuSettings, randomMenu, searched } from '../support/menu-cases.ts';

const RUNS = { numRuns: 60, seed: 20_270_704, endOnFailure: true };
/** A hundredth of the quick search: the rules hold at any effort. */
const WORK = 6_000;
/** A tenth of it, where the outcome itself is asked for. */
const GOOD_WORK = 60_000;
const solver = await highsSolver();
describe('a menu that was searched for', () => {
  it('is never worse than first expired, first out', () =>
    fc.assert(
      fc.property(menuProblems, (problem) => {
        const model = buildMenuModel(problem);
        const first = chosenMenu(model, firstExpired.choose(problem));
        fc.pre(brokenRules(model, first).length === 0);
        expect(searched(model, WORK, first).points).toBeLessThanOrEqual(
          scoreMenu(model, first).points + 1e-6,
        );
      }),
      RUNS,
    ));

  it('breaks no hard rule, and the search counts as the scoring does', () =>
    fc.assert(
      fc.property(menuModels, (model) => {
        const { opened, points } = searched(model, WORK);
        expect(brokenRules(model, opened)).toEqual([]);
        expect(points).toBeCloseTo(scoreMenu(model, opened).points, 4);
      }),
      RUNS,
    ));

  it('serves nobody what they exclude', () =>
    fc.assert(
      fc.property(trips, stocks, (trip, stock) => {
        const problem = poseMenuProblem(trip, stock, defaultSettings());
        const model = buildMenuModel(problem);
        const { served } = scoreMenu(model, searched(model, WORK).opened);
        const { opened } = searched(model, WORK);
        served.forEach((day, dayIndex) => {
          const foods = opened.filter(({ slot }) => model.slots[slot]?.dayIndex === dayIndex);
          day.eatenKcal.forEach((byGroup, food) =>
            byGroup.forEach((kcal, group) => {
              const lot = model.lots[foods[food]?.lot ?? -1]?.lot;
              for (const name of model.groups[group]?.eaters ?? []) {
                const eater = trip.party.find((other) => other.name === name);
                if (kcal > 0) expect(lot && eater && mayEat(lot, eater)).toBe(true);
              }
            }),
          );
        });
      }),
      RUNS,
    ));

  it('is the same for the same input', () =>
    fc.assert(
      fc.property(menuModels, (model) => {
        expect(searched(model, 2_000)).toEqual(searched(model, 2_000));
      }),
      { ...RUNS, numRuns: 20 },
    ));

  it('lies above the bound', () =>
    fc.assert(
      fc.property(menuModels, (model) => {
        const { points } = searched(model, WORK);
        const bound = boundMenu(model, solver);
        expect(bound.points).toBeLessThanOrEqual(points + 1e-4);
        expect(brokenRules(model, bound.opened)).toEqual([]);
      }),
      RUNS,
    ));

  it('is not made worse by a pouch more on the shelf, beyond what is proven of it', () =>
    fc.assert(
      fc.property(trips, stocks, menuSettings, fc.nat(), (trip, stock, settings, pick) => {
        fc.pre(stock.length > 0);
        const problem = poseMenuProblem(trip, stock, settings);
        const at = pick % stock.length;
        const more = stock.map((lot, index) => (index === at ? { ...lot, pouches: lot.pouches + 1 } : lot));
        const model = buildMenuModel(problem);
        const richer = buildMenuModel({ ...problem, stock: more });
        const before = searched(model, GOOD_WORK);
        const proven = Math.max(0, before.points - boundMenu(model, solver).points);
        // the menu of the poorer shelf is one of the richer shelf, with one lot numbered otherwise where it was not there before
        const start = chosenMenu(
          richer,
          fromModel(model, before.opened, () => ''),
        );
        expect(scoreMenu(richer, start).points).toBeCloseTo(before.points, 4);
        expect(searched(richer, GOOD_WORK).points).toBeLessThanOrEqual(before.points + proven + 1e-4);
      }),
      { ...RUNS, numRuns: 40 },
    ));
});

describe('kept meals', () => {
  it('stand as they are, and the search works around them', () =>
    fc.assert(
      fc.property(menuProblems, fc.nat(), (problem, pick) => {
        const chosen = firstExpired.choose(problem).filter(({ opened }) => opened.length > 0);
        fc.pre(chosen.length > 0);
        const keptMeal = chosen[pick % chosen.length];
        if (!keptMeal) return;
        const taken = new Map(keptMeal.opened.map(({ lot, pouches }) => [lot.code, pouches]));
        const model = buildMenuModel({
          ...problem,
          kept: [keptMeal],
          stock: problem.stock.map((lot) => ({ ...lot, pouches: lot.pouches - (taken.get(lot.code) ?? 0) })),
        });
        const { opened } = searched(model, WORK);
        expect(brokenRules(model, opened)).toEqual([]);
        expect(
          fromModel(model, opened, () => '').some(
            ({ day, meal }) => day === keptMeal.day && meal === keptMeal.meal,
          ),
        ).toBe(false);
        expect(model.kept.map(({ lot, pouches }) => [model.lots[lot]?.lot.code, pouches])).toEqual(
          keptMeal.opened.map(({ lot, pouches }) => [lot.code, pouches]),
        );
      }),
      RUNS,
    ));
});

describe('the table of the search', () => {
  it('counts any menu as the scoring does, and back again after changes', () =>
    fc.assert(
      fc.property(menuModels, fc.nat(1000), (model, seed) => {
        const menu = randomMenu(model, seed);
        const table = new MenuTable(model, menu);
        const points = scoreMenu(model, menu).points;
        expect(table.points).toBeCloseTo(points, 4);
        table.become(randomMenu(model, seed + 1));
        table.become(menu);
        expect(table.points).toBeCloseTo(points, 4);
      }),
      { ...RUNS, numRuns: 150 },
    ));
});

describe('the bound', () => {
  it('holds for any prices, however wrong', () =>
    fc.assert(
      fc.property(menuModels, fc.nat(1000), (model, seed) => {
        const program = tightened(menuProgram(model), model);
        const random = randomFrom(seed);
        const right = solver.relax(program).prices;
        const wrong = program.rows.map(
          (_, row) => (right[row] ?? 0) * (0.5 + random()) + (random() < 0.1 ? random() - 0.5 : 0),
        );
        const points = scoreMenu(model, randomMenu(model, seed)).points;
        expect(boundFromPrices(program, wrong)).toBeLessThanOrEqual(points + 1e-6);
      }),
      RUNS,
    ));
});
