export const COST_KINDS = [
  'ingredients',
  'electricity',
  'turnaround',
  'pouches',
  'absorbers',
  'machine',
] as const;
export type CostKind = (typeof COST_KINDS)[number];
export type CostLine = { readonly what: CostKind; readonly minor: number };
export type BatchCost = {
  readonly lines: readonly CostLine[];
  readonly totalMinor: number;
  readonly perServingMinor: number;
  readonly per1000KcalMinor: number | undefined;
  /** Against a serving from a shop. */
  readonly shop:
    | {
        readonly servingMinor: number;
        readonly savedPerServingMinor: number;
        /** Batches like this one until the machine is paid for; `undefined` where it has no price or nothing is saved. */
        readonly batchesToPay: number | undefined;
      }
    | undefined;
};

/**
 * What a batch cost: all that was paid, over the servings that came out. Amounts in minor units, not rounded.
 *
 * @param machineMinor what the dryer cost
 * @param expectedBatches over how many batches that is shared
 */
export function batchCost(of: {
  readonly ingredientsMinor: number;
  readonly energyKwh: number;
  /** Between this run and the next. */
  readonly turnaroundKwh?: number;
  readonly minorPerKwh: number;
  readonly pouchesMinor: number;
  readonly absorbersMinor: number;
  readonly machineMinor: number;
  readonly expectedBatches: number;
  readonly servings: number;
  readonly energyKcal: number;
  readonly shopServingMinor: number | undefined;
}): BatchCost {
  const running: CostLine[] = [
    { what: 'ingredients', minor: of.ingredientsMinor },
    { what: 'electricity', minor: of.energyKwh * of.minorPerKwh },
    ...(of.turnaroundKwh ? [{ what: 'turnaround', minor: of.turnaroundKwh * of.minorPerKwh } as const] : []),
    { what: 'pouches', minor: of.pouchesMinor },
    { what: 'absorbers', minor: of.absorbersMinor },
  ];
  const machine: CostLine = {
    what: 'machine',
    minor: of.machineMinor / of.expectedBatches,
  };
  const runningMinor = running.reduce((sum, { minor }) => sum + minor, 0);
  const totalMinor = runningMinor + machine.minor;
  const perServingMinor = of.servings > 0 ? totalMinor / of.servings : 0;
  const savedByBatch =
    of.shopServingMinor === undefined ? 0 : of.shopServingMinor * of.servings - runningMinor;
  return {
    lines: [...running, machine],
    totalMinor,
    perServingMinor,
    per1000KcalMinor: of.energyKcal > 0 ? (totalMinor / of.energyKcal) * 1000 : undefined,
    shop:
      of.shopServingMinor === undefined
        ? undefined
        : {
            servingMinor: of.shopServingMinor,
            savedPerServingMinor: of.shopServingMinor - perServingMinor,
            batchesToPay:
              savedByBatch > 0 && of.machineMinor > 0
                ? Math.ceil(of.machineMinor / savedByBatch - 1e-9)
                : undefined,
          },
  };
}
