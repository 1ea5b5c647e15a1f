import { expect, it } from 'vitest';
import { exampleLot, exampleTrip } from '../../../../tests/support/examples.ts';
import { defaultSettings } from '../model/settings.ts';
import { buildMenuProblem } from '../plan-trip.ts';
import { asLaying, type LaidDish } from './laying.ts';
import { buildMenuModel } from './menu-model.ts';
import { brokenRules } from './score-menu.ts';

const lot = (recipe: string, servingsPerPouch: number) =>
  exampleLot({ code: recipe, recipe, servingsPerPouch, energyKcal: 500, pouches: 5 });
const trip = exampleTrip({
  dayCount: 1,
  firstMeal: 'dinner',
  lastMeal: 'dinner',
  party: ['Ada', 'Bo', 'Cy', 'Di'].map((name) => ({ name })),
});
const model = buildMenuModel(
  buildMenuProblem(trip, [lot('dal', 1), lot('rice', 2), lot('stew', 2)], defaultSettings()),
);
const indexOf = (recipe: string) => model.lots.findIndex((own) => own.lot.recipe === recipe);
const pot = (
  recipe: string,
  pouches: number,
  portions: readonly (readonly [number, number])[],
): LaidDish => ({
  dish: model.dishes.indexOf(recipe),
  style: 'shared pot',
  lots: [indexOf(recipe)],
  pouches: [pouches],
  portions: portions.map(([place, servings]) => ({ place, servings })),
});
const rulesOf = (...dishes: LaidDish[]) => {
  const [slot] = model.slots;
  if (!slot) throw new Error('no slot');
  return brokenRules(model, { layings: [asLaying(model, slot, dishes)], extras: [] }).map(({ rule }) => rule);
};

it('lets a table be laid that people could eat at', () => {
  expect(
    rulesOf(
      pot('rice', 1, [
        [0, 1],
        [1, 1],
      ]),
      pot('stew', 1, [
        [2, 1],
        [3, 1],
      ]),
    ),
  ).toEqual([]);
});

it.each([
  [
    'a pouch that nobody eats of',
    'fewer pouches',
    [
      pot('rice', 2, [
        [0, 1],
        [1, 1],
      ]),
    ],
  ],
  [
    'half a pouch',
    'whole pouches',
    [
      pot('rice', 0.5, [
        [0, 0.5],
        [1, 0.5],
      ]),
    ],
  ],
  [
    'one shared dish in two pots',
    'dishes of a table',
    [
      pot('rice', 1, [
        [0, 1],
        [1, 1],
      ]),
      pot('rice', 1, [
        [2, 1],
        [3, 1],
      ]),
    ],
  ],
  ['a dish that nobody eats', 'portions', [pot('rice', 1, [])]],
  [
    'servings of a large pouch by hand that it does not hold',
    'more than opened',
    [
      {
        ...pot('rice', 1, [
          [0, 2],
          [1, 1],
        ]),
        style: 'own pouch' as const,
      },
    ],
  ],
])('says that %s is against the rules', (_, rule, dishes) => {
  expect(rulesOf(...dishes)).toContain(rule);
});
