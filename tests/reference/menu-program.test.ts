/*
 * The menu model against a solver that knows nothing of it: HiGHS (Huangfu & Hall 2018, Mathematical Programming Computation 10:119-142; npm `highs`), reading the exported
 * file in LP format; and small instances against all menus there are, by enumeration.
 */
import fc from 'fast-check';
import loadHighs from 'highs';
import { describe, expect, it } from 'vitest';
import { highsSolver } from '../../src/lib/menu-search/highs-solver.ts';
import { serveDay, type OpenedFood } from '../../src/lib/planning/menu/serve-day.ts';
import { boundByTree, boundMenu } from '../../src/lib/planning/optimiser/bound-menu.ts';
import {
  buildMenuModel,
  type MenuModel,
  type OpenedAt,
} from '../../src/lib/planning/optimiser/menu-model.ts';
import { menuProgram, tightened } from '../../src/lib/planning/optimiser/menu-program.ts';
import { brokenRules, scoreMenu } from '../../src/lib/planning/optimiser/score-menu.ts';
import { writeLp } from '../../src/lib/planning/optimiser/write-lp.ts';
import { poseMenuProblem } from '../../src/lib/planning/pose-menu-problem.ts';
import { Settings } from '../../src/lib/planning/model/settings.ts';
import { exampleLot, exampleTrip } from '../support/examples.ts';
import { menuModels, randomMenu, searched } from '../support/menu-cases.ts';

const highs = await loadHighs();
const solver = await highsSolver();
const RUNS = { numRuns: 40, seed: 20_270_705, endOnFailure: true };

describe('the exported program', () => {
  it('has, for any menu, the points of the scoring as its objective', () =>
    fc.assert(
      fc.property(menuModels, fc.nat(1000), (model, seed) => {
        const menu = randomMenu(model, seed);
        const program = menuProgram(model);
        const pouches = new Map(menu.map(({ slot, lot, pouches: count }) => [`${slot} ${lot}`, count]));
        const fixed = {
          ...program,
          rows: [
            ...program.rows,
            ...program.opened.map(({ column, slot, lot }, index) => {
              const count = pouches.get(`${slot} ${lot}`) ?? 0;
              return { name: `fixed_${index}`, terms: [[column, 1]] as const, lower: count, upper: count };
            }),
          ],
        };
        const solved = highs.solve(writeLp(fixed, 'fixed menu'), { output_flag: false, mip_rel_gap: 0 });
        expect(solved.Status).toBe('Optimal');
        expect(solved.ObjectiveValue).toBeCloseTo(scoreMenu(model, menu).points, 2);
      }),
      RUNS,
    ));

  it('keeps its best menu when it is tightened', () =>
    fc.assert(
      fc.property(menuModels, (model) => {
        const program = menuProgram(model);
        const best = (text: string) =>
          highs.solve(text, { output_flag: false, mip_rel_gap: 0, mip_abs_gap: 0, mip_max_nodes: 2000 });
        const plain = best(writeLp(program, 'plain'));
        const tight = best(writeLp(tightened(program, model), 'tightened'));
        fc.pre(plain.Status === 'Optimal' && tight.Status === 'Optimal');
        expect(tight.ObjectiveValue).toBeCloseTo(plain.ObjectiveValue, 2);
      }),
      { ...RUNS, numRuns: 6 },
    ));
});

describe('sharing a day', () => {
  it('costs what the linear program of the day costs', () =>
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 4 }),
        fc.integer({ min: 1, max: 3 }),
        fc.array(
          fc.record({
            meal: fc.nat(2),
            kcal: fc.integer({ min: 0, max: 1500 }),
            feeds: fc.array(fc.boolean(), { minLength: 4, maxLength: 4 }),
          }),
          { maxLength: 7 },
        ),
        fc.record({
          missingKcal: fc.constantFrom(0, 1),
          smallMealKcal: fc.constantFrom(0, 0.5, 1.5),
          leftOverKcal: fc.constantFrom(0, 0.3, 1),
          aboveCeilingKcal: fc.constantFrom(0, 0.1, 0.6),
        }),
        (groups, meals, drafts, costs) => {
          const foods: OpenedFood[] = drafts.map((food) => ({
            ...food,
            meal: food.meal % meals,
            feeds: food.feeds.slice(0, groups),
          }));
          const over = <T>(count: number, of: (index: number) => T) =>
            Array.from({ length: count }, (_, at) => of(at));
          const targetKcal = over(groups, (group) => 500 + 170 * group);
          const table = {
            targetKcal,
            ceilingKcal: targetKcal.map((kcal) => kcal * 1.2),
            floorKcal: over(meals, (meal) => targetKcal.map((kcal) => (kcal * (0.2 + 0.1 * meal)) / meals)),
            mostKcal: over(meals, (meal) => targetKcal.map((kcal) => (kcal * (1.2 + 0.2 * meal)) / meals)),
          };
          const served = serveDay(table, foods, costs);
          const points =
            served.missingKcal * costs.missingKcal +
            served.smallMealKcal * costs.smallMealKcal +
            served.leftOverKcal * costs.leftOverKcal +
            served.aboveCeilingKcal * costs.aboveCeilingKcal;

          const objective: string[] = [];
          const rows: string[] = [];
          const bounds: string[] = [];
          foods.forEach(({ kcal, feeds }, food) => {
            objective.push(`${costs.leftOverKcal} left${food}`);
            rows.push(`${over(groups, (group) => `e${food}_${group}`).join(' + ')} + left${food} = ${kcal}`);
            feeds.forEach((fed, group) =>
              bounds.push(fed ? `e${food}_${group} >= 0` : `e${food}_${group} = 0`),
            );
          });
          const eaten = (group: number, meal?: number) =>
            foods.flatMap((food, at) =>
              meal === undefined || food.meal === meal ? [`e${at}_${group}`] : [],
            );
          targetKcal.forEach((target, group) => {
            objective.push(`${costs.missingKcal} miss${group}`, `${costs.aboveCeilingKcal} above${group}`);
            rows.push(`${[...eaten(group), `miss${group}`].join(' + ')} >= ${target}`);
            rows.push(
              `${[...eaten(group), '0 one'].join(' + ')} - above${group} <= ${table.ceilingKcal[group]}`,
            );
            over(meals, (meal) => {
              objective.push(`${costs.smallMealKcal} small${meal}_${group}`);
              rows.push(
                `${[...eaten(group, meal), `small${meal}_${group}`].join(' + ')} >= ${table.floorKcal[meal]?.[group]}`,
              );
              if (eaten(group, meal).length > 0)
                rows.push(`${eaten(group, meal).join(' + ')} <= ${table.mostKcal[meal]?.[group]}`);
            });
          });
          const text = `Minimize\n obj: ${objective.join(' + ')}\nSubject To\n${rows.map((row, index) => ` r${index}: ${row}`).join('\n')}\nBounds\n ${bounds.join('\n ')}\n one = 1\nEnd\n`;
          const solved = highs.solve(text, { output_flag: false });
          expect(solved.Status).toBe('Optimal');
          expect(points).toBeCloseTo(solved.ObjectiveValue, 3);
        },
      ),
      { ...RUNS, numRuns: 150 },
    ));
});

/** Every menu that a model allows. */
function* everyMenu(model: MenuModel): Generator<OpenedAt[]> {
  const places = model.lots.flatMap((lot) =>
    model.slots.flatMap((slot) => {
      const most = lot.most[slot.index] ?? 0;
      return most > 0 ? [{ slot: slot.index, lot: lot.index, most }] : [];
    }),
  );
  const chosen: OpenedAt[] = [];
  function* from(at: number): Generator<OpenedAt[]> {
    const place = places[at];
    if (!place) {
      if (brokenRules(model, chosen).length === 0) yield [...chosen];
      return;
    }
    for (let pouches = 0; pouches <= place.most; pouches++) {
      if (pouches > 0) chosen.push({ slot: place.slot, lot: place.lot, pouches });
      yield* from(at + 1);
      if (pouches > 0) chosen.pop();
    }
  }
  yield* from(0);
}

describe('small instances, by enumeration of every menu', () => {
  const lots = (kcals: readonly number[]) =>
    kcals.map((energyKcal, index) =>
      exampleLot({
        code: `L${index}`,
        recipe: index % 3 === 2 ? 'recipe 0' : `recipe ${index}`,
        mealKinds: index % 2 === 0 ? ['dinner'] : ['dinner', 'lunch'],
        pouches: 1 + (index % 2),
        servingsPerPouch: 1 + (index % 2),
        energyKcal,
        dryWeightG: energyKcal / (3.8 + 0.2 * (index % 4)),
        bestBefore: index === 1 ? '2027-07-05' : `2028-0${1 + index}-01`,
        allergens: index === 0 ? ['milk'] : [],
        proteinG: 10 + 3 * index,
      }),
    );
  const cases = [
    { name: 'ample', kcals: [520, 610, 480, 700, 390], days: 2, allergens: [] as const },
    { name: 'scarce', kcals: [310, 260, 280], days: 2, allergens: [] as const },
    { name: 'with a wall', kcals: [520, 610, 480, 350], days: 2, allergens: ['milk'] as const },
    { name: 'one recipe a meal', kcals: [520, 310, 480, 290], days: 2, allergens: [] as const, recipes: 1 },
  ];
  for (const { name, kcals, days, allergens, recipes } of cases)
    it(`${name}: the search and the tree find the best, and the bound is under it`, () => {
      const trip = exampleTrip({
        dayCount: days,
        firstMeal: 'dinner',
        lastMeal: 'lunch',
        energyKcal: 2100,
        party: [{ name: 'Ada' }, { name: 'Bo', energyKcal: 2600, allergens: [...allergens] }],
      });
      const settings = Settings.parse(recipes === undefined ? {} : { maxRecipesPerMeal: recipes });
      const model = buildMenuModel(poseMenuProblem(trip, lots(kcals), settings));
      let [best, count] = [Infinity, 0];
      for (const menu of everyMenu(model)) {
        best = Math.min(best, scoreMenu(model, menu).points);
        count++;
      }
      expect(count).toBeGreaterThan(10);
      expect(searched(model, 40_000).points).toBeCloseTo(best, 4);
      expect(boundMenu(model, solver).points).toBeLessThanOrEqual(best + 1e-6);
      const tree = boundByTree(model, solver, 10_000);
      expect(tree?.points).toBeCloseTo(best, 2);
      expect(scoreMenu(model, tree?.opened ?? []).points).toBeCloseTo(best, 2);
    });
});
