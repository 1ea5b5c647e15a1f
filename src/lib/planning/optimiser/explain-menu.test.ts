import { expect, it } from 'vitest';
import { exampleLot, exampleTrip } from '../../../../tests/support/examples.ts';
import { searched } from '../../../../tests/support/menu-cases.ts';
import { buildMenuModel } from '../menu/menu-model.ts';
import { defaultSettings } from '../model/settings.ts';
import { buildMenuProblem } from '../plan-trip.ts';
import { reasonsOf } from './explain-menu.ts';

const dinner = (recipe: string, bestBefore: string, milk: boolean) =>
  exampleLot({
    code: recipe,
    recipe,
    bestBefore,
    pouches: 1,
    servingsPerPouch: 1,
    allergens: milk ? ['milk'] : [],
  });

it('says of nobody that they cannot have the other dish who could', () => {
  const trip = exampleTrip({
    dayCount: 1,
    firstMeal: 'dinner',
    lastMeal: 'dinner',
    servingStyle: 'own pouch',
    party: [{ name: 'Ada' }, { name: 'Bo', allergens: ['milk'] }],
  });
  const stock = [dinner('stew', '2028-01-01', true), dinner('dal', '2028-02-01', false)];
  const model = buildMenuModel(buildMenuProblem(trip, stock, defaultSettings()));
  const reasons = reasonsOf(model, searched(model).menu);
  const reasonOf = (recipe: string) => reasons.find(({ dish }) => model.dishes[dish] === recipe)?.reason;
  expect(reasonOf('stew')).toEqual({ code: 'oldest for all', eaters: ['Ada'] });
  expect(reasonOf('dal')).toEqual({ code: 'oldest for some', eaters: ['Bo'] });
});
