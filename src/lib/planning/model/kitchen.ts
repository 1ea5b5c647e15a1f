import { z } from 'zod';
import { say, text, type Text } from '../../texts/say.ts';
import { count, minutes, priceMinor, share, someVolumeMl, someWeightG, weightG } from './amounts.ts';
import { wrong } from './faults.ts';
import { CalendarDate, ShortText } from './kinds.ts';
import { BARRIERS, FAT_CLASSES, PROCESSES, WEEKDAYS } from './words.ts';

export const Process = z.enum(PROCESSES);
export type Process = z.infer<typeof Process>;

const hours = (most: number) =>
  z
    .number(wrong('not-hours'))
    .positive(wrong('not-positive'))
    .max(most, wrong('over', { most, unit: 'h' }));
const energyKwh = () =>
  z
    .number(wrong('not-kwh'))
    .nonnegative(wrong('negative'))
    .max(1000, wrong('over', { most: 1000, unit: 'kWh' }));

/** A machine that dries food on trays. */
export const Dryer = z.strictObject({
  name: ShortText.describe('Name, unique in the kitchen'),
  process: Process,
  trayCount: count(1, 60).describe('Trays'),
  trayAreaCm2: z
    .number(wrong('not-an-area'))
    .positive(wrong('not-positive'))
    .max(20_000, wrong('over', { most: 20_000, unit: 'cm²' }))
    .describe('Area of one tray, cm²'),
  trayLimitG: someWeightG(20_000).describe('Most wet food on one tray, g'),
  depthLimitMm: z
    .number(wrong('not-a-depth'))
    .positive(wrong('not-positive'))
    .max(100, wrong('over', { most: 100, unit: 'mm' }))
    .describe('Most depth of food on a tray, mm'),
  meanPowerW: z
    .number(wrong('not-a-power'))
    .min(0, wrong('negative'))
    .max(20_000, wrong('over', { most: 20_000, unit: 'W' }))
    .describe('Mean electric power over a run, W, where no run was metered'),
  turnaroundH: z
    .number(wrong('not-hours'))
    .nonnegative(wrong('negative'))
    .max(200, wrong('over', { most: 200, unit: 'h' }))
    .optional()
    .describe('Hours between two runs, to defrost, change oil or filter and clean; left out: none'),
  turnaroundKwh: energyKwh().optional().describe('Electricity for that, kWh; left out: none'),
  priceMinor: priceMinor().default(0).describe('What the machine cost'),
  expectedBatches: count(1, 100_000).default(300).describe('Batches it is expected to last'),
});
export type Dryer = z.infer<typeof Dryer>;

/** What holds for a way of drying, until the user knows better. */
export const ProcessFigures = z.strictObject({
  residualShare: share()
    .max(0.5, wrong('over', { most: 50, unit: '%' }))
    .describe('Expected residual moisture, wet basis'),
  mostResidualShare: share()
    .max(0.5, wrong('over', { most: 50, unit: '%' }))
    .describe('Food with more residual moisture is not released to the shelf'),
  lossBoundPerH: share()
    .positive(wrong('not-positive'))
    .describe('Dry when a tray loses less than this share of its weight in an hour of drying'),
  waterShare: z
    .number(wrong('not-a-share'))
    .min(0.1, wrong('under', { least: 10, unit: '%' }))
    .max(2, wrong('over', { most: 200, unit: '%' }))
    .describe('Water to add, of the water removed'),
  steepMin: minutes(),
  stirAfterMin: minutes(),
});
export type ProcessFigures = z.infer<typeof ProcessFigures>;

/** What stands between the food and air, light and damp. */
export const Barrier = z.enum(BARRIERS);
export type Barrier = z.infer<typeof Barrier>;

export const PouchSize = z.strictObject({
  label: ShortText.describe('Name, unique in the kitchen'),
  barrier: Barrier,
  volumeMl: someVolumeMl(50_000).describe('Volume when filled and sealed, ml'),
  tareG: weightG(2000).describe('Empty weight, g'),
  priceMinor: priceMinor().default(0),
  canBeCut: z.boolean().default(false).describe('One can be cut and sealed as two halves'),
  noBoilingWater: z.boolean().optional().describe('It takes no boiling water; left out: it does'),
  noEating: z.boolean().optional().describe('It cannot be eaten from; left out: it can'),
  stands: z.boolean().optional().describe('It stands by itself'),
});
export type PouchSize = z.infer<typeof PouchSize>;

export const AbsorberSize = z.strictObject({
  label: ShortText.describe('Name, unique in the kitchen'),
  oxygenMl: someVolumeMl(10_000).describe('Oxygen that one takes up, ml'),
  tareG: weightG(200).default(2),
  priceMinor: priceMinor().default(0),
});
export type AbsorberSize = z.infer<typeof AbsorberSize>;

/** By fat in the dry matter: see `fatClassOf`. */
export const FatClass = z.enum(FAT_CLASSES);
export type FatClass = z.infer<typeof FatClass>;

/** How long sealed food keeps at 20 °C. */
export const StorageRule = z.strictObject({
  process: Process,
  fatClass: FatClass,
  barrier: Barrier,
  absorber: z.boolean().describe('Sealed with an oxygen absorber that is large enough'),
  months: z
    .number(wrong('not-months'))
    .min(0, wrong('negative'))
    .max(360, wrong('over', { most: 360 })),
});
export type StorageRule = z.infer<typeof StorageRule>;

/** A run of a dryer that was noted by hand; those of sealed batches are known besides. */
export const LoggedRun = z.strictObject({
  date: CalendarDate,
  dryer: ShortText,
  preFrozen: z.boolean(),
  waterRemovedG: someWeightG().describe('Water that the run took out, g'),
  hours: hours(500),
  energyKwh: energyKwh().optional(),
});
export type LoggedRun = z.infer<typeof LoggedRun>;

export const Weekday = z.enum(WEEKDAYS);
export type Weekday = z.infer<typeof Weekday>;

/** How a text is said. */
type Called = (name: Text) => string;

/** Rules of thumb, in round figures and of no machine: a middle, a small and a large one. Put in yours. */
const usualDryers = (called: Called): Dryer[] => [
  {
    name: called(text('freeze dryer')),
    process: 'freeze-dried',
    trayCount: 4,
    trayAreaCm2: 800,
    trayLimitG: 1000,
    depthLimitMm: 20,
    meanPowerW: 1000,
    priceMinor: 0,
    expectedBatches: 300,
    turnaroundH: 4,
    turnaroundKwh: 0.5,
  },
  {
    name: called(text('dehydrator')),
    process: 'dehydrated',
    trayCount: 5,
    trayAreaCm2: 800,
    trayLimitG: 400,
    depthLimitMm: 10,
    meanPowerW: 500,
    priceMinor: 0,
    expectedBatches: 300,
    turnaroundH: 1,
    turnaroundKwh: 0,
  },
  {
    name: called(text('large freeze dryer')),
    process: 'freeze-dried',
    trayCount: 6,
    trayAreaCm2: 1500,
    trayLimitG: 2000,
    depthLimitMm: 20,
    meanPowerW: 2000,
    priceMinor: 0,
    expectedBatches: 300,
    turnaroundH: 4,
    turnaroundKwh: 1,
  },
];

/** Rules of thumb, put in yours. Freeze drying takes out nearly all water, warm air leaves more; one wait with a stir half-way. */
const USUAL_PROCESSES: Record<Process, ProcessFigures> = {
  'freeze-dried': {
    residualShare: 0.02,
    mostResidualShare: 0.05,
    lossBoundPerH: 0.005,
    waterShare: 0.9,
    steepMin: 10,
    stirAfterMin: 5,
  },
  dehydrated: {
    residualShare: 0.08,
    mostResidualShare: 0.1,
    lossBoundPerH: 0.01,
    waterShare: 0.9,
    steepMin: 20,
    stirAfterMin: 10,
  },
};

/** Rules of thumb, in round figures: weigh and fill yours. */
const usualPouches = (called: Called): PouchSize[] => [
  {
    label: called(text('foil, 2 l')),
    barrier: 'foil pouch',
    volumeMl: 2000,
    tareG: 20,
    priceMinor: 40,
    canBeCut: true,
  },
  {
    label: called(text('foil, 1 l')),
    barrier: 'foil pouch',
    volumeMl: 1000,
    tareG: 10,
    priceMinor: 30,
    canBeCut: false,
  },
  {
    label: called(text('foil, 0.5 l')),
    barrier: 'foil pouch',
    volumeMl: 500,
    tareG: 6,
    priceMinor: 20,
    canBeCut: false,
  },
];
const USUAL_ABSORBERS: AbsorberSize[] = [
  { label: '100 ml', oxygenMl: 100, tareG: 2, priceMinor: 10 },
  { label: '200 ml', oxygenMl: 200, tareG: 3, priceMinor: 10 },
  { label: '500 ml', oxygenMl: 500, tareG: 5, priceMinor: 20 },
];

/**
 * Months at 20 °C. Freeze-dried: rule of thumb; university extension says several months in an ordinary container and longer with a barrier and an absorber, without figures.
 * Dehydrated: 4 months to a year (University of Georgia Extension, So Easy to Preserve); fat turns rancid first. Meat dried in warm air keeps for weeks: `storage.ts`.
 */
export function usualStorage(): StorageRule[] {
  const rule = (
    process: Process,
    barrier: Barrier,
    absorber: boolean,
    months: readonly [lean: number, middling: number, fatty: number],
  ): StorageRule[] =>
    FAT_CLASSES.map((fatClass, index) => ({
      process,
      fatClass,
      barrier,
      absorber,
      months: months[index] ?? 0,
    }));
  return [
    ...rule('freeze-dried', 'foil pouch', true, [60, 24, 12]),
    ...rule('freeze-dried', 'jar or can', true, [48, 18, 9]),
    ...rule('freeze-dried', 'plastic pouch', true, [12, 6, 3]),
    ...rule('freeze-dried', 'foil pouch', false, [12, 6, 3]),
    ...rule('freeze-dried', 'jar or can', false, [9, 5, 2]),
    ...rule('freeze-dried', 'plastic pouch', false, [4, 2, 1]),
    ...rule('dehydrated', 'foil pouch', true, [12, 6, 3]),
    ...rule('dehydrated', 'jar or can', true, [12, 6, 3]),
    ...rule('dehydrated', 'plastic pouch', true, [6, 4, 2]),
    ...rule('dehydrated', 'foil pouch', false, [6, 4, 2]),
    ...rule('dehydrated', 'jar or can', false, [6, 4, 2]),
    ...rule('dehydrated', 'plastic pouch', false, [4, 2, 1]),
  ];
}

/** Refuses a list in which two lines have the same key, at the field of the later one. */
const unlike =
  <Line>(field: keyof Line & string, keyOf: (line: Line) => string, message: (line: Line) => string) =>
  (lines: readonly Line[], context: z.RefinementCtx): void => {
    const seen = new Set<string>();
    lines.forEach((line, index) => {
      const key = keyOf(line);
      if (seen.has(key)) context.addIssue({ code: 'custom', path: [index, field], message: message(line) });
      seen.add(key);
    });
  };
const twice = (name: string) => wrong('listed-twice', { name });
const unlikeLabels = unlike<{ label: string }>(
  'label',
  ({ label }) => label,
  ({ label }) => twice(label),
);

/** The least of the 4 to 10 days for which dried food is conditioned. Source: Utah State and Michigan State University Extension. */
export const CONDITIONING_DAYS = 4;

/** What a household dries, seals and reckons with. */
export const Kitchen = z.strictObject({
  dryers: z
    .array(Dryer)
    .max(20, wrong('too-many', { most: 20 }))
    .superRefine(
      unlike(
        'name',
        ({ name }) => name,
        ({ name }) => twice(name),
      ),
    )
    .default(() => usualDryers(say)),
  processes: z
    .strictObject({ 'freeze-dried': ProcessFigures, dehydrated: ProcessFigures })
    .default(USUAL_PROCESSES),
  pouches: z
    .array(PouchSize)
    .max(40, wrong('too-many', { most: 40 }))
    .superRefine(unlikeLabels)
    .default(() => usualPouches(say)),
  headspaceShare: share()
    .max(0.8, wrong('over', { most: 80, unit: '%' }))
    .default(0.2)
    .describe('Part of a pouch that stays free of food, to stir in and to seal'),
  absorbers: z
    .array(AbsorberSize)
    .max(40, wrong('too-many', { most: 40 }))
    .superRefine(unlikeLabels)
    .default(USUAL_ABSORBERS),
  absorberReserve: z
    .number(wrong('not-a-share'))
    .min(0, wrong('negative'))
    .max(5, wrong('over', { most: 500, unit: '%' }))
    .default(0.25)
    .describe('More absorber than the oxygen asks for: for air in the food, and age of the absorber'),
  storage: z
    .array(StorageRule)
    .max(200, wrong('too-many', { most: 200 }))
    .superRefine(
      unlike(
        'months',
        ({ process, fatClass, barrier, absorber }) =>
          JSON.stringify({ process, fatClass, barrier, absorber }),
        ({ process, fatClass, barrier, absorber }) =>
          wrong('storage-rule-twice', { process, fatClass, barrier, absorber }),
      ),
    )
    .default(usualStorage),
  storageTemperatureC: z
    .number(wrong('not-a-temperature'))
    .min(-30, wrong('under', { least: -30, unit: '°C' }))
    .max(45, wrong('over', { most: 45, unit: '°C' }))
    .default(20)
    .describe('Where the shelf stands, °C'),
  scaleStepG: z
    .number(wrong('not-a-weight'))
    .positive(wrong('not-positive'))
    .max(100, wrong('over', { most: 100, unit: 'g' }))
    .default(1)
    .describe('Smallest step that the scale for the trays shows, g'),
  conditioningDays: count(0, 30)
    .default(CONDITIONING_DAYS)
    .describe('Days that dehydrated food is conditioned before it is sealed'),
  electricityMinorPerKwh: priceMinor().default(30).describe('Price of one kWh'),
  shopServingMinor: priceMinor().optional().describe('What a serving like it costs in a shop'),
  cookDays: z
    .array(Weekday)
    .min(1, wrong('no-weekday'))
    .default([...WEEKDAYS])
    .describe('Days on which there is time to cook, load, unload and seal'),
  readyDaysBefore: count(0, 60)
    .default(2)
    .describe('Days before departure by which everything has to be sealed'),
  runs: z
    .array(LoggedRun)
    .max(1000, wrong('too-many', { most: 1000 }))
    .default([]),
});
export type Kitchen = z.infer<typeof Kitchen>;

/** @param called how the names of dryers and pouches are said; left out: in the language around */
export const defaultKitchen = (called: Called = say): Kitchen =>
  Kitchen.parse({ dryers: usualDryers(called), pouches: usualPouches(called) });
