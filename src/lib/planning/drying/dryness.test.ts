import { describe, expect, it } from 'vitest';
import type { TrayFeel } from '../model/batch.ts';
import { defaultKitchen } from '../model/kitchen.ts';
import { judgeDryness, type DrynessGap } from './dryness.ts';

const figures = defaultKitchen().processes['freeze-dried'];
type Look = readonly [afterH: number, grossG: number | undefined, feel?: TrayFeel];
/** One tray of 1000 g of food at 70 % water on a tray of 200 g. */
const judged = (looks: readonly Look[], moisture = 0.7) =>
  judgeDryness(
    {
      trays: [{ tareG: 200, loadedG: 1200 }],
      weighings: looks.map(([afterH, grossG, feel = 'dry through']) => ({
        afterH,
        trays: [{ ...(grossG !== undefined && { grossG }), feel }],
      })),
    },
    { moisture, fatShare: 0 },
    figures,
    1,
  );
const open = (looks: readonly Look[]) => judged(looks).trays[0]?.open.map(({ code }) => code);

describe('a tray', () => {
  it('is dry when its weight stands, its water is gone and it feels dry through', () => {
    const { dry, trays, nowG, hours, expectedDryG } = judged([
      [24, 506.5],
      [26, 506],
    ]);
    expect(dry).toBe(true);
    expect(nowG).toBe(306);
    expect(hours).toBe(26);
    expect(expectedDryG).toBeCloseTo(300 / 0.98, 9);
    expect(trays[0]?.residual?.value).toBeCloseTo(6 / 306, 9);
    expect(trays[0]?.lossPerH).toBeCloseTo(0.25 / 306, 9);
    expect(trays[0]?.residual?.low).toBe(0);
    expect(trays[0]?.residual?.high).toBeCloseTo(21 / 306, 9);
  });

  it.each<[string, readonly Look[], DrynessGap['code']]>([
    ['not weighed', [[24, undefined]], 'not-weighed'],
    ['weighed once', [[24, 506]], 'weighed-once'],
    [
      'weighed twice within the hour',
      [
        [24, 506],
        [24.5, 506],
      ],
      'weighed-too-soon',
    ],
    [
      'still losing',
      [
        [20, 512],
        [22, 506],
      ],
      'still-losing',
    ],
    [
      'gaining',
      [
        [22, 503],
        [24, 508],
      ],
      'gained-weight',
    ],
    [
      'still wet by weight',
      [
        [22, 540],
        [24, 540],
      ],
      'too-moist',
    ],
    [
      'cold inside',
      [
        [22, 506],
        [24, 506, 'cold spot'],
      ],
      'cold-spot',
    ],
    [
      'damp inside',
      [
        [22, 506],
        [24, 506, 'damp or soft spot'],
      ],
      'damp-spot',
    ],
    [
      'not felt',
      [
        [22, 506],
        [24, 506, 'not felt'],
      ],
      'not-felt',
    ],
    [
      'felt before only',
      [
        [22, 506, 'dry through'],
        [24, 506, 'not felt'],
      ],
      'not-felt',
    ],
  ])('that is %s is not dry, and says why', (_, looks, code) => {
    expect(judged(looks).dry).toBe(false);
    expect(open(looks)).toContain(code);
  });

  it('that was left out of a weighing is judged by those that it was in', () => {
    expect(
      judged([
        [20, 506],
        [22, undefined],
        [24, 506],
      ]).trays[0],
    ).toMatchObject({ nowG: 306, lossPerH: 0, open: [] });
  });

  it('lighter than its dry matter is doubted, and not taken for dry', () => {
    expect(
      judged([
        [24, 495],
        [26, 495],
      ]).doubts,
    ).toEqual([]);
    expect(
      judged([
        [24, 450],
        [26, 450],
      ]).doubts,
    ).toMatchObject([
      {
        code: 'lighter-than-dry-matter',
        params: { number: 1, weightG: 250, solidsG: expect.closeTo(300, 9) },
      },
    ]);
    expect(
      open([
        [24, 450],
        [26, 450],
      ]),
    ).toContain('lighter-than-dry-matter');
  });

  it('of nothing but water leaves no number undefined', () => {
    const { trays, expectedDryG } = judged(
      [
        [24, 206],
        [26, 206],
      ],
      1,
    );
    expect(expectedDryG).toBe(0);
    expect(trays[0]?.residual).toEqual({ value: 1, low: 0, high: 1 });
  });
});

describe('all trays', () => {
  it('that are none are not dry', () => {
    expect(judgeDryness({ trays: [], weighings: [] }, { moisture: 0.7, fatShare: 0 }, figures, 1)).toEqual({
      trays: [],
      nowG: 0,
      expectedDryG: 0,
      hours: 0,
      dry: false,
      doubts: [],
    });
  });

  it('count before any weighing as loaded', () => {
    expect(judged([])).toMatchObject({
      nowG: 1000,
      dry: false,
      trays: [{ residual: undefined, lossPerH: undefined }],
    });
  });

  it('name the one that stands out as wet', () => {
    const trays = [306, 308, 340].map((grossG) => ({ grossG, feel: 'dry through' as const }));
    const { doubts, dry } = judgeDryness(
      {
        trays: trays.map(() => ({ tareG: 0, loadedG: 1000 })),
        weighings: [
          { afterH: 24, trays },
          { afterH: 25, trays },
        ],
      },
      { moisture: 0.7, fatShare: 0 },
      figures,
      1,
    );
    expect(dry).toBe(false);
    expect(doubts).toHaveLength(1);
    expect(doubts).toMatchObject([{ code: 'wetter-than-others', params: { number: 3 } }]);
  });
});

describe('the scale', () => {
  const looks = (scaleStepG: number, hours: number) =>
    judgeDryness(
      {
        trays: [{ tareG: 0, loadedG: 1000 }],
        weighings: [20, 20 + hours].map((afterH) => ({
          afterH,
          trays: [{ grossG: 306, feel: 'dry through' as const }],
        })),
      },
      { moisture: 0.7, fatShare: 0 },
      figures,
      scaleStepG,
    ).trays[0]?.open;

  it('that shows steps of 5 g has to wait until the bound is more than a step', () => {
    expect(looks(1, 1)).toEqual([]);
    expect(looks(5, 1)).toContainEqual({ code: 'scale-too-coarse', stepG: 5, hours: 1, waitH: 3.5 });
    expect(looks(5, 3.5)).toEqual([]);
  });
});

it('fat holds no water: the bound is for what is there without it', () => {
  const [tray] = judgeDryness(
    {
      trays: [{ tareG: 0, loadedG: 1000 }],
      weighings: [20, 22].map((afterH) => ({
        afterH,
        trays: [{ grossG: 320, feel: 'dry through' as const }],
      })),
    },
    { moisture: 0.7, fatShare: 0.15 },
    figures,
    1,
  ).trays;
  // 20 g of water over 320 - 150 g
  expect(tray?.fatFree?.value).toBeCloseTo(20 / 170, 9);
  expect(tray?.residual?.value).toBeCloseTo(20 / 320, 9);
});
