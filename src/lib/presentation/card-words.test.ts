/* What a card says is what the plan computed, in the words of whoever stands at the stove. */
import { describe, expect, it } from 'vitest';
import { exampleLot } from '../../../tests/support/examples.ts';
import { defaultSettings } from '../planning/model/settings.ts';
import { Trip, type TripInput } from '../planning/model/trip.ts';
import { planTrip } from '../planning/plan-trip.ts';
import { cardDishes, cardsByGroup } from '../trip-views/card.ts';
import { elsewhereText, firstForText, makingTexts, platesTexts, takenText } from './card-words.ts';

const cardOf = (trip: Partial<TripInput>, lots: ReturnType<typeof exampleLot>[]) =>
  planTrip(
    Trip.parse({
      name: 'T',
      startDate: '2026-07-04',
      dayCount: 1,
      firstMeal: 'dinner',
      lastMeal: 'dinner',
      party: [{ name: 'Ada' }, { name: 'Ben' }],
      days: [{ campAltitudeM: 0 }],
      ...trip,
    }),
    lots,
    defaultSettings(),
  ).card;
const dinnerOf = (card: ReturnType<typeof cardOf>) =>
  card.days.at(-1)?.meals.find(({ meal }) => meal === 'dinner');
const firstLine = (card: ReturnType<typeof cardOf>) => {
  const [line] = dinnerOf(card)?.pouches ?? [];
  if (!line) throw new Error('nothing for dinner');
  return line;
};

describe('how a dish is made', () => {
  it('in a pot: pouches emptied, water for all of them', () => {
    const line = firstLine(
      cardOf({ servingStyle: 'shared pot' }, [exampleLot({ servingsPerPouch: 2, pouches: 1, waterMl: 300 })]),
    );
    expect(takenText(line)).toMatch(/^1 × /);
    expect(makingTexts(line, 'metric').slice(0, 2)).toEqual([
      'Empty the pouch into the pot.',
      '600 ml boiling water.',
    ]);
  });

  it('in pouches of their own: water into each, and who has which part', () => {
    const line = firstLine(
      cardOf({ servingStyle: 'own pouch' }, [
        exampleLot({ servingsPerPouch: 1, pouches: 2, energyKcal: 900, waterMl: 300 }),
      ]),
    );
    expect(makingTexts(line, 'metric')[0]).toBe('300 ml boiling water into each pouch, 600 ml in total.');
    expect(platesTexts(line)).toEqual(['Ada and Ben: 1 whole pouch each']);
  });

  it('out of a pouch that takes no boiling water', () => {
    const line = firstLine(
      cardOf({ servingStyle: 'mixed' }, [
        exampleLot({ servingsPerPouch: 2, pouches: 1, pouchTakesBoilingWater: false }),
      ]),
    );
    expect(line.pourIntoPot).toBe(true);
    expect(makingTexts(line, 'metric')[0]).toMatch(/^Empty/);
    expect(makingTexts({ ...line, style: 'own pouch' }, 'metric')[0]).toMatch(/into a bowl/);
  });

  it.each([
    ['cook' as const, 'Then cook it through, before anyone eats it.'],
    ['boil hard' as const, 'Then boil it hard for 10 minutes, before anyone eats it.'],
  ])('and has to %s after its wait', (cookAfter, words) => {
    const line = firstLine(cardOf({}, [exampleLot({ servingsPerPouch: 2, pouches: 1, cookAfter })]));
    expect(makingTexts(line, 'metric').at(-1)).toBe(words);
  });
});

it('of two dishes in turn in one pot, the avoider’s comes first, with its own spoon', () => {
  const card = cardOf(
    {
      servingStyle: 'shared pot',
      party: [{ name: 'Ada' }, { name: 'Cas' }, { name: 'Ben', allergens: ['milk'] }],
    },
    [
      exampleLot({
        code: 'MILK',
        recipe: 'Gratin',
        servingsPerPouch: 2,
        pouches: 1,
        allergens: ['milk'],
        bestBefore: '2027-01-01',
      }),
      exampleLot({
        code: 'FREE',
        recipe: 'Dal',
        servingsPerPouch: 1,
        pouches: 1,
        allergens: [],
        bestBefore: '2027-02-01',
      }),
    ],
  );
  const meal = dinnerOf(card);
  expect(meal && firstForText(meal)).toBe(
    'First make what Ben may eat, in the clean pot and with its own spoon.',
  );
  expect(meal?.pouches.map(({ code }) => code)).toEqual(['FREE', 'MILK']);
});

it('each cook group has a card of its own, with its people, its meals, and who of it eats elsewhere', () => {
  const card = cardOf(
    {
      cookGroups: [
        { name: 'North', eaters: ['Ada'] },
        { name: 'South', eaters: ['Ben'] },
      ],
      dayCount: 2,
      mealRules: [{ days: [2], meals: ['dinner'], elsewhere: ['Ben'] }],
    },
    [exampleLot({ pouches: 8, servingsPerPouch: 1 })],
  );
  const [north, south] = cardsByGroup(card);
  expect(north?.card.party.map(({ eater }) => eater)).toEqual(['Ada']);
  expect(north?.card.days[1]?.elsewhere).toEqual([]);
  expect(north?.card.days[1]?.meals.map(({ group }) => group)).toContain('North');
  const [away] = south?.card.days[1]?.elsewhere ?? [];
  expect(away && elsewhereText(away, card.groups)).toBe('dinner: eaten elsewhere.');
  for (const { group, card: own } of cardsByGroup(card))
    for (const meal of own.days.flatMap(({ meals }) => meals)) expect(meal.group).toBe(group);
});

it('a reserve is on the card, with who carries it', () => {
  const card = cardOf({ reserveMeals: 1 }, [exampleLot({ pouches: 8, servingsPerPouch: 1 })]);
  expect(card.reserve.length).toBeGreaterThan(0);
  for (const { pouches, carriedBy } of card.reserve)
    expect(carriedBy.reduce((sum, carrier) => sum + carrier.pouches, 0)).toBe(pouches);
});

it('a pot of two lots is dealt out once, and nothing of it is lost on the way', () => {
  const lots = [
    exampleLot({ code: 'A', recipe: 'Dal', servingsPerPouch: 1, pouches: 1, bestBefore: '2027-01-01' }),
    exampleLot({ code: 'B', recipe: 'Dal', servingsPerPouch: 1, pouches: 2, bestBefore: '2027-02-01' }),
  ];
  const meal = dinnerOf(cardOf({ servingStyle: 'shared pot' }, lots));
  const [pot, ...others] = meal ? cardDishes(meal) : [];
  expect(others).toEqual([]);
  expect(pot?.lines.map(({ code }) => code)).toEqual(['A', 'B']);
  expect(pot?.shares.map(({ eater }) => eater)).toEqual(['Ada', 'Ben']);
  const eaten = pot?.shares.reduce((sum, { servings }) => sum + servings, 0) ?? 0;
  expect(eaten + (pot?.leftOverServings ?? 0)).toBeCloseTo(
    (pot?.lines.length ?? 0) + (meal?.pouches[1]?.pouches ?? 0) - 1,
    6,
  );
});
