import { COST_FIELDS, settingsFields, settingsLabel } from '$lib/forms/settings-form.ts';
import { defaultSettings, type MenuCosts, type Settings } from '$lib/planning/model/settings.ts';
import { MEAL_KINDS } from '$lib/planning/model/words.ts';
import { shownUnit, type UnitSystem } from '$lib/presentation/show.ts';
import { say, type Text, text, withUnit } from '$lib/texts/say.ts';
import type { Reason, Reasons } from './reason.ts';

/** Why the usual settings are what they are, by field. */
const WHY = {
  unitSystem: text('most of the world measures so'),
  currency: text('one had to be chosen; nothing is converted when you change it'),
  mealShares: text('what a hiking day is mostly split into (rule of thumb)'),
  repeatAfterDays: text('the same on two days running is what people tire of first (rule of thumb)'),
  dryOpenDays: text('bars and powders draw damp once they are open; in damp air take less (rule of thumb)'),
  proteinFloorG: text('a floor, as a rule of thumb; the range of IOM 2005 begins at 10% of the energy, 25 g'),
  waterAtRestMl: text(
    'between the 2.0 l for women and 2.5 l for men of EFSA 2010, moderate weather, food included; age and sex change it',
  ),
  drinkPerWalkingHourMl: text(
    'what soldiers drank at will on a march, 383 ± 150 ml an hour (Nolte et al. 2010); heat and hard work raise it by the table of TB MED 507',
  ),
  hotWaterC: text(
    'it saves a third of the fuel where food needs no boiling water (rule of thumb); natural water is treated separately',
  ),
  insulatedSteep: text('no cover, so that waits are too long rather than too short'),
} as const satisfies Partial<Record<keyof Settings, Text>>;

const COST_WHY: Readonly<Record<keyof MenuCosts, Text>> = {
  missingKcal: text('the measure for all the others'),
  leftOverKcal: text('waste is a third as bad as hunger (rule of thumb)'),
  secondDish: text('another pot costs fuel, water and time (rule of thumb)'),
  repeat: text('for a group of four, as much as 60 kcal (rule of thumb)'),
  disliked: text('a little worse than the same dish again (rule of thumb)'),
  carriedKgH: text('one would go 1 kcal hungry for a kilogram less in an hour (rule of thumb)'),
  fuelG: text('a gram burnt is a gram bought and carried (rule of thumb)'),
  shelfLifeYear: text('enough to take the older of two like pouches, no more (rule of thumb)'),
  proteinG: text('it sorts menus that are otherwise alike (rule of thumb)'),
};

/** @returns why the usual settings are what they are, by part of the page. */
export function settingsReasons(system: UnitSystem): Reasons {
  const usual = settingsFields({ ...defaultSettings(), unitSystem: system });
  const of = (name: string, why: Text, unit = ''): Record<string, Reason> => ({
    [name]: {
      label: settingsLabel(name),
      value: unit ? withUnit(usual[name]?.[0] ?? '', unit) : (usual[name]?.[0] ?? ''),
      why: say(why),
    },
  });
  return {
    units: {
      of: {
        unitSystem: { label: settingsLabel('unitSystem'), value: say('metric'), why: say(WHY.unitSystem) },
        ...of('currency', WHY.currency),
      },
    },
    shares: {
      method: 'energy',
      of: Object.assign({}, ...MEAL_KINDS.map((meal) => of(`mealShares.${meal}`, WHY.mealShares, '%'))),
    },
    menu: {
      method: 'menu',
      of: {
        ...of('repeatAfterDays', WHY.repeatAfterDays),
        ...of('dryOpenDays', WHY.dryOpenDays),
        ...of('proteinFloorG', WHY.proteinFloorG, 'g'),
      },
    },
    costs: {
      method: 'menu',
      of: {
        ...Object.assign({}, ...COST_FIELDS.map(({ cost }) => of(`menuCosts.${cost}`, COST_WHY[cost]))),
      },
    },
    water: {
      method: 'water',
      of: {
        ...of('waterAtRestMl', WHY.waterAtRestMl, shownUnit('water', system)),
        ...of('drinkPerWalkingHourMl', WHY.drinkPerWalkingHourMl, shownUnit('pour', system)),
        ...of('hotWaterC', WHY.hotWaterC, shownUnit('temperature', system)),
        insulatedSteep: { label: say('Steeping'), why: say(WHY.insulatedSteep) },
      },
    },
    fuel: {
      method: 'stove-and-fuel',
      of: {
        fuelContainers: {
          label: say('The containers listed to start with'),
          why: say('sizes commonly sold, with usual empty weights (rule of thumb); weigh your own'),
        },
      },
    },
    staples: {
      method: 'what-is-missing',
      of: {
        staples: {
          label: say('The foods listed to start with'),
          why: say(
            'sold almost everywhere and eaten without cooking; energy is a rule of thumb, so check the package, for allergens too',
          ),
        },
      },
    },
  };
}

/** Why a link that is given out begins as it does. */
export const linkReasons = (): Reasons => ({
  link: {
    of: {
      opens: {
        label: say('Gives access to'),
        why: say('the trip that was listed last, or the shelf where there is none'),
      },
      days: {
        label: say('Valid for (days)'),
        value: '14',
        why: say(
          'a week before the trip and one on it (rule of thumb); the shorter, the less a lost link opens',
        ),
      },
      mayNote: {
        label: say('Trail notes'),
        value: say('cannot sign in'),
        why: say('someone who only reads a card does not need to change the stock'),
      },
    },
  },
});

/** Why labels are laid out as they are at first. */
export const labelReasons = (address: string): Reasons => ({
  labels: {
    method: 'labels',
    of: {
      code: { label: say('Lots'), why: say('those you came with; without any, none is chosen') },
      paper: {
        label: say('Paper'),
        why: say('the one you chose, else the first for your units'),
      },
      'own.page': {
        label: say('Labels on'),
        why: say('the first of the list; counts with your own size only'),
      },
      'own.columns': { label: say('Labels across'), value: '1', why: say('one label to a page') },
      'own.rows': { label: say('Labels down'), value: '1', why: say('one label to a page') },
      'own.gapXMm': { label: say('Gap across'), value: '0', why: say('labels that touch') },
      'own.gapYMm': { label: say('Gap down'), value: '0', why: say('labels that touch') },
      from: { label: say('First free place on the sheet'), value: '1', why: say('a new sheet') },
      copies: {
        label: say('Labels of each lot'),
        value: say('one for each pouch at home'),
        why: say('each pouch needs its own'),
      },
      address: {
        label: say('Address in the QR code'),
        value: address,
        why: say(
          'where this page was opened, or the address for readers where the program was started with one',
        ),
      },
    },
  },
});
