import { describe, expect, it } from 'vitest';
import { exampleBatch, exampleFood, exampleRecipe } from '../../../../tests/support/kitchen-examples.ts';
import { Batch } from '../model/batch.ts';
import { defaultKitchen, type Kitchen, PouchSize } from '../model/kitchen.ts';
import { faultsOf } from '../model/faults.ts';
import type { BatchNoticeCode } from './batch-notices.ts';
import { batchSheet, type BatchSheet } from './batch-sheet.ts';

const TODAY = '2026-09-03';
const sheet = (changes: Parameters<typeof exampleBatch>[0] = {}, kitchen: Partial<Kitchen> = {}) =>
  batchSheet(exampleBatch(changes), { ...defaultKitchen(), ...kitchen }, [], TODAY);
const noticed = ({ notices }: ReturnType<typeof sheet>, code: BatchNoticeCode) =>
  notices.find((notice) => notice.code === code);
const refused = (changes: Parameters<typeof exampleBatch>[0]) => {
  const { error } = Batch.safeParse({ ...exampleBatch(), ...changes }, { reportInput: true });
  return (
    error && faultsOf(error).map(({ field, code, params }) => `${field} ${code} ${JSON.stringify(params)}`)
  );
};
const JAR = PouchSize.parse({ label: 'jar', barrier: 'jar or can', volumeMl: 2000, tareG: 400 });
const fill = (changes: Record<string, unknown> = {}) => ({
  pouch: JAR,
  servings: 4,
  pouches: 2,
  absorber: { label: '500 ml', oxygenMl: 500, tareG: 5, priceMinor: 10 },
  absorbers: 1,
  ...changes,
});

describe('a batch that is dry', () => {
  it('is sealed into lots without a block or a hold', () => {
    const { blocks, holds, dry, lots, fills } = sheet();
    expect([...blocks, ...holds]).toEqual([]);
    expect(dry).toMatchObject({ dryG: 1224, packedG: 1224, weighed: true, servings: 11 });
    expect(dry.residual).toBeCloseTo(24 / 1224, 9);
    expect(dry.servingKcal).toBeCloseTo(5200 / 11, 9);
    expect(dry.servingParts.waterG).toBeCloseTo(24 / 11, 9);
    expect(lots.reduce((sum, { pouches, servingsPerPouch }) => sum + pouches * servingsPerPouch, 0)).toBe(11);
    expect(lots.map(({ code }) => code)).toEqual(fills.map((_, index) => `BP1-${index + 1}`));
    expect(lots[0]).toMatchObject({
      recipe: 'bean pan',
      sealedOn: TODAY,
      // 160 g of fat in 1200 g of dry matter: middling, two years
      bestBefore: '2028-09-03',
      dryWeightG: 111.27,
      energyKcal: 472.7,
      // 2776 g of water removed from 11 servings, 90 % of it back
      waterMl: 227,
      steepMin: 10,
      stirAfterMin: 5,
      allergens: [],
      diets: expect.arrayContaining(['vegan']),
    });
  });

  it('carries the packaging in its lots: pouch, or half of one, and absorbers', () => {
    const { lots, fills } = sheet();
    expect(lots.map(({ tareG }) => tareG)).toEqual(
      fills.map(
        (one) =>
          one.fill.pouch.tareG * (one.fill.half ? 0.5 : 1) +
          one.fill.absorbers * (one.fill.absorber?.tareG ?? 0),
      ),
    );
  });

  it('is packed into the pouches that the cook chose', () => {
    const packed = sheet({ fills: [fill()] });
    const { lots, blocks } = packed;
    expect(blocks).toEqual([]);
    expect(lots).toMatchObject([
      { code: 'BP1', pouches: 2, servingsPerPouch: 4, tareG: 405, volumeMl: 2000, bestBefore: '2028-03-03' },
    ]);
    expect(noticed(packed, 'servings-left')?.params).toEqual({ left: 3, servings: 11 });
  });

  it('keeps less long, and says so, with absorbers that do not do', () => {
    const small = { label: '50 ml', oxygenMl: 50, tareG: 1, priceMinor: 1 };
    const few = sheet({ fills: [fill({ absorber: small })] });
    expect(few.fills[0]).toMatchObject({ isOxygenFree: false, keeping: { months: 5 } });
    expect(noticed(few, 'absorber-too-small')?.params).toMatchObject({ absorbedMl: 50 });
    const none = sheet({ fills: [fill({ absorber: undefined, absorbers: 0 })] });
    expect(noticed(none, 'no-absorber')?.params).toEqual({ pouch: { label: 'jar', half: false } });
  });

  it('is sealed without absorbers where the kitchen has none', () => {
    const { fills, blocks } = sheet({}, { absorbers: [] });
    expect(blocks).toEqual([]);
    expect(fills.every((one) => one.fill.absorbers === 0 && one.keeping?.months === 6)).toBe(true);
  });

  it('has its water and energy shared by what is packed', () => {
    const half = sheet({ packedG: 612 });
    expect(half.dry.servingKcal).toBeCloseTo(5200 / 22, 9);
    expect(half.dry.servingRemovedG).toBeCloseTo(2776 / 22, 9);
  });

  it('takes no water where the recipe wants none', () => {
    expect(
      sheet({ recipe: exampleRecipe({ waterKind: 'none', steepMin: 9, stirAfterMin: 5 }) }).lots[0],
    ).toMatchObject({
      waterMl: 0,
      steepMin: 0,
    });
  });

  it('says when a stir falls behind the steep time', () => {
    const late = sheet({ recipe: exampleRecipe({ stirAfterMin: 12 }) });
    expect(late.steep).toEqual({ steepMin: 10 });
    expect(noticed(late, 'stir-outside-wait')?.params).toEqual({ stirMin: 12, waitMin: 10 });
  });

  it('costs what was paid, against the shop price of the batch before that of the kitchen', () => {
    const { cost } = sheet({ energyKwh: 20, shopServingMinor: 800 }, { shopServingMinor: 700 });
    expect(cost.lines.slice(0, 2)).toEqual([
      { what: 'ingredients', minor: 1000 },
      { what: 'electricity', minor: 600 },
    ]);
    expect(cost.shop?.servingMinor).toBe(800);
    expect(sheet({}, { shopServingMinor: 700 }).cost.shop?.servingMinor).toBe(700);
  });

  it('states no cost on a lot where a price is missing', () => {
    const unpriced = sheet({
      recipe: exampleRecipe({ ingredients: [{ food: exampleFood(), quantity: { amount: 4, unit: 'kg' } }] }),
    });
    expect(unpriced.lots[0]?.costMinor).toBeUndefined();
    expect(noticed(unpriced, 'no-price')?.params).toEqual({ foods: ['bean mix'] });
  });

  it('is sealed on its day, once it is, and keeps the best-before of the cook', () => {
    const sealed = sheet({ sealed: { on: '2026-09-02', lots: ['BP1'] }, bestBefore: '2027-01-01' });
    expect(sealed.lots[0]).toMatchObject({ sealedOn: '2026-09-02', bestBefore: '2027-01-01' });
  });
});

describe('allergens', () => {
  const unstated = exampleRecipe({
    ingredients: [
      { food: exampleFood({ allergens: ['celery'] }), quantity: { amount: 2, unit: 'kg' } },
      { food: exampleFood({ name: 'stock', allergens: undefined }), quantity: { amount: 2, unit: 'kg' } },
    ],
  });

  it('are not stated where nobody knows those of an ingredient', () => {
    const open = sheet({ recipe: unstated });
    expect(open.lots[0]).not.toHaveProperty('allergens');
    expect(noticed(open, 'allergens-undeclared')).toMatchObject({
      severity: 'warning',
      params: { foods: ['stock'] },
    });
  });

  it('are those of the cook and of the ingredients together', () => {
    expect(sheet({ recipe: unstated, allergens: ['soy'] }).lots[0]?.allergens).toEqual(['soy', 'celery']);
  });
});

describe('a batch that cannot be sealed', () => {
  it.each<[string, Parameters<typeof exampleBatch>[0], BatchSheet['blocks'][number]['code'], object?]>([
    ['on no tray', { trays: [], weighings: [] }, 'no-tray-weighed'],
    [
      'of no ingredients',
      { recipe: exampleRecipe({ ingredients: [] }) },
      'recipe-problem',
      { params: { code: 'no-ingredients' } },
    ],
    [
      'of no ingredients, but weighed',
      { recipe: exampleRecipe({ ingredients: [] }), cookedG: 4000 },
      'recipe-problem',
    ],
    [
      'weighed lighter than its dry matter',
      { cookedG: 1000 },
      'recipe-problem',
      { params: { field: 'cookedG', cookedG: 1000 } },
    ],
    [
      'heavier on the trays than cooked',
      { cookedG: 3000 },
      'more-on-trays-than-cooked',
      { params: { wetG: 4000, cookedG: 3000 } },
    ],
    [
      'with more packed than was dry',
      { packedG: 2000 },
      'more-packed-than-dry',
      { params: { packedG: 2000, dryG: 1224 } },
    ],
    ['cooked on a day to come', { cookedOn: '2030-01-01' }, 'cooked-in-future'],
    ['with a cup heavier than food without air', { cup: { volumeMl: 240, netG: 500 } }, 'cup-too-heavy'],
    [
      'with more in a pouch than it can hold',
      { fills: [fill({ servings: 11, pouches: 1, pouch: { ...JAR, volumeMl: 300 } })] },
      'pouch-overfull',
      { params: { servings: 11 } },
    ],
    ['in no pouch', { fills: [] }, 'no-pouch-chosen'],
    [
      'in more pouches than servings',
      { fills: [fill({ pouches: 3 })] },
      'more-in-pouches',
      { params: { inPouches: 12, servings: 11 } },
    ],
    ['best before it is sealed', { bestBefore: '2026-01-01' }, 'best-before-sealing'],
    [
      'of servings too large for a lot',
      {
        servings: 1,
        mostPerPouch: 1,
        cup: { volumeMl: 1000, netG: 999 },
        trays: [{ loadedG: 20_000 }],
        weighings: [],
        cookedG: 20_000,
        timesCooked: 5,
      },
      'lot-problem',
      { field: 'dryWeightG' },
    ],
  ])('%s says why, and writes no lot', (_, changes, code, more = {}) => {
    const { blocks, lots } = sheet(changes, {
      pouches: [...defaultKitchen().pouches, { ...JAR, volumeMl: 40_000 }],
    });
    expect(blocks).toContainEqual(expect.objectContaining({ code }));
    expect(blocks.find((block) => block.code === code)).toMatchObject(more);
    expect(lots).toEqual([]);
  });

  it('for want of a large pouch says how much a serving fills', () => {
    const { blocks } = sheet({ servings: 1 });
    expect(blocks).toMatchObject([
      { code: 'serving-too-large', params: { servingMl: expect.closeTo(1224 + 0.9 * 2776, 0) } },
    ]);
    expect(sheet({}, { pouches: [] }).blocks).toMatchObject([{ code: 'no-pouch-size' }]);
  });

  it('for want of a line in the storage table says which', () => {
    const { blocks } = sheet({ fills: [fill()] }, { storage: [] });
    expect(blocks).toEqual([
      {
        code: 'no-shelf-life',
        process: 'freeze-dried',
        fatClass: 'middling',
        pouch: { label: 'jar', half: false },
        barrier: 'jar or can',
        absorber: true,
      },
    ]);
    expect(sheet({ fills: [fill()], bestBefore: '2027-01-01' }, { storage: [] }).blocks).toEqual([]);
  });
});

describe('a serving costs', () => {
  // A worked example of our own.
  it('all that was paid over the servings that came out', () => {
    const pouch = PouchSize.parse({
      label: 'bag',
      barrier: 'foil pouch',
      volumeMl: 2000,
      tareG: 20,
      priceMinor: 40,
      canBeCut: true,
    });
    const absorber = { label: '500 ml', oxygenMl: 500, tareG: 5, priceMinor: 10 };
    const { cost } = batchSheet(
      exampleBatch({
        energyKwh: 20,
        dryer: { ...exampleBatch().dryer, priceMinor: 240_000, expectedBatches: 300 },
        // 8 servings in whole pouches with two absorbers, 2 in halves with one: one serving is eaten at once
        fills: [
          { pouch, servings: 4, pouches: 2, absorber, absorbers: 2 },
          { pouch, half: true, servings: 1, pouches: 2, absorber, absorbers: 1 },
        ],
      }),
      { ...defaultKitchen(), electricityMinorPerKwh: 30 },
      [],
      TODAY,
    );
    // ingredients 10.00, electricity 6.00 and 0.5 kWh between runs, pouches 2 × 0.40 + 2 × 0.20, absorbers 6 × 0.10, machine 2400 / 300 = 8.00
    expect(cost.totalMinor).toBeCloseTo(1000 + 600 + 15 + 120 + 60 + 800, 9);
    expect(cost.perServingMinor).toBeCloseTo(2595 / 10, 9);
  });
});

describe('a batch that is not dry', () => {
  it('is held back, tray by tray', () => {
    const { holds, blocks } = sheet({ weighings: [] });
    expect(blocks).toEqual([]);
    expect(holds).toEqual([1, 2, 3, 4].map((tray) => ({ tray, open: { code: 'not-weighed' } })));
  });

  it('is held back where a check is open', () => {
    expect(sheet({ checks: [] }).holds).toHaveLength(6);
  });

  it('is reckoned with as it is expected to get', () => {
    const { dry, expected } = sheet({ weighings: [] });
    expect(dry.weighed).toBe(false);
    expect(dry.dryG).toBeCloseTo(1200 / 0.98, 9);
    expect(dry.residual).toBeCloseTo(0.02, 9);
    expect(expected.waterG).toBeCloseTo(4000 - 1200 / 0.98, 9);
  });

  it('of food that is dry from the start loses nothing', () => {
    const nuts = exampleFood({ composition: { waterG: 1, proteinG: 20, fatG: 9, carbohydrateG: 60 } });
    const { expected, dry } = sheet({
      recipe: exampleRecipe({ ingredients: [{ food: nuts, quantity: { amount: 4, unit: 'kg' } }] }),
      weighings: [],
    });
    expect(expected.waterG).toBe(0);
    expect(dry.dryG).toBe(4000);
  });
});

describe('before the trays are loaded', () => {
  it('tells how many trays the dish fills and how much goes on each', () => {
    expect(sheet({ trays: [], weighings: [] }).load).toMatchObject({
      traysNeeded: 4,
      evenlyG: 1000,
      wetG: 4000,
      share: 1,
    });
    const twice = sheet({ trays: [], weighings: [], timesCooked: 2 });
    expect(twice.load).toMatchObject({ traysNeeded: 8, evenlyG: 1000, capacityG: 4000 });
    expect(noticed(twice, 'too-few-trays')?.params).toMatchObject({ cookedG: 8000, needed: 8, count: 4 });
  });

  it('and after, warns of trays too heavy or too deep', () => {
    const light = exampleRecipe({ bulkGPerMl: 0.5 });
    const tray = (loadedG: number) => ({ trays: [{ loadedG }], weighings: [] });
    expect(noticed(sheet(tray(1200)), 'trays-too-heavy')?.params).toEqual({
      mostG: 1000,
      trays: [{ number: 1, value: 1200 }],
    });
    expect(noticed(sheet({ ...tray(1000), recipe: light }), 'trays-too-deep')?.params).toMatchObject({
      mostMm: 20,
      trays: [{ number: 1, value: expect.closeTo(25, 0) }],
    });
  });

  it('counts what is not on the trays as left out, and asks for the weight of the dish', () => {
    const part = sheet({ trays: [{ loadedG: 1000 }], weighings: [] });
    expect(part.dry.servings).toBe(3);
    expect(part.dry.servingKcal).toBeCloseTo(1300 / 3, 9);
    expect(noticed(part, 'dish-not-weighed')?.params).toMatchObject({ share: 0.25 });
    expect(
      noticed(sheet({ trays: [{ loadedG: 1000 }], weighings: [], cookedG: 4000 }), 'dish-not-weighed'),
    ).toBeUndefined();
  });
});

describe('the batch form refuses', () => {
  const weighing = (grossG: number, afterH = 24) => ({ afterH, trays: [{ grossG }] });
  const one = { trays: [{ tareG: 500, loadedG: 1500 }] };
  it.each<[string, Parameters<typeof exampleBatch>[0], string]>([
    [
      'dry food heavier than wet',
      { ...one, weighings: [weighing(1501)] },
      'weighings[0].trays[0].grossG heavier-than-loaded {"loadedG":1500}',
    ],
    [
      'a tray lighter than empty',
      { ...one, weighings: [weighing(500)] },
      'weighings[0].trays[0].grossG lighter-than-tray {"tareG":500}',
    ],
    [
      'a weighing before the one before',
      { ...one, weighings: [weighing(900), weighing(800, 20)] },
      'weighings[1].afterH weighing-not-later {"beforeH":24}',
    ],
    ['a weighing of other trays', { weighings: [weighing(900)] }, 'weighings[0] tray-without-weight'],
    [
      'a tray with nothing on it',
      { trays: [{ tareG: 500, loadedG: 500 }], weighings: [] },
      'trays[0].loadedG lighter-than-tray {}',
    ],
    [
      'more trays than the dryer has',
      { trays: Array.from({ length: 5 }, () => ({ loadedG: 500 })), weighings: [] },
      'trays more-trays-than-dryer {"trays":5,"dryer":"freeze dryer","most":4}',
    ],
    ['a cooked dish of no weight', { cookedG: 0 }, 'cookedG not-positive'],
    ['negative weights', { packedG: -1 }, 'packedG negative'],
  ])('%s', (_, changes, fault) => {
    expect(refused(changes)?.join('\n')).toContain(fault);
  });
});
