import type { CarryPlan, DayLoad, Pack } from '../planning/model/trip-plan.ts';
import { shownNumber, type UnitSystem } from '../presentation/show.ts';
import { text, type Text } from '../texts/say.ts';

/** What a pack is made of, in the order in which it is stacked. */
export const LOAD_PARTS = [
  { key: 'baseG', label: text('Base') },
  { key: 'packagingG', label: text('Packaging') },
  { key: 'foodG', label: text('Food') },
  { key: 'fuelG', label: text('Fuel') },
  { key: 'waterG', label: text('Water') },
] as const satisfies readonly { key: keyof DayLoad; label: Text }[];

/** One day of one pack, and the pouches that are still in it when leaving camp. */
export type PackDay = DayLoad & { readonly pouchesLeft: Pack['pouches'] };

/** @returns the days of one eater's pack; empty where nobody of that name is in the party. */
export function packDays({ packs, loads }: CarryPlan, eater: string): PackDay[] {
  const pack = packs.find((other) => other.eater === eater);
  return loads
    .filter((load) => load.eater === eater)
    .map((load) => ({
      ...load,
      pouchesLeft: (pack?.pouches ?? []).filter(
        ({ day, meal }) => day > load.day || (day === load.day && meal !== 'breakfast'),
      ),
    }));
}

/** The heaviest moment of each pack over the trip. */
export function peakLoads({ packs, loads }: CarryPlan): DayLoad[] {
  return packs.flatMap(({ eater }) => {
    const [first, ...rest] = loads.filter((load) => load.eater === eater);
    return first ? [rest.reduce((peak, load) => (load.peakG > peak.peakG ? load : peak), first)] : [];
  });
}

/** The heaviest pack of a day; `undefined` where nobody carries anything on it. */
export function heaviestOn({ loads }: Pick<CarryPlan, 'loads'>, day: number): DayLoad | undefined {
  const [first, ...rest] = loads.filter((load) => load.day === day);
  return first && rest.reduce((most, load) => (load.peakG > most.peakG ? load : most), first);
}

/** @returns the parts of packs that are more than nothing on some day, as figures are shown. */
export function shownParts(days: readonly DayLoad[], system: UnitSystem): (typeof LOAD_PARTS)[number][] {
  const nothing = shownNumber(0, 'pack', system);
  return LOAD_PARTS.filter(({ key }) =>
    days.some((day) => shownNumber(day[key], 'pack', system) !== nothing),
  );
}
