import { say } from '../../texts/say.ts';
import type { MenuCosts } from '../model/settings.ts';
import { MEAL_WORDS } from '../model/words.ts';
import { pouchBurden, type MenuModel, type OpenedAt } from './menu-model.ts';
import { serveDay, type DayServed } from '../menu/serve-day.ts';

/** What a menu comes to, by what it is paid for. */
export type MenuScore = {
  /** Points in all; less is better. */
  readonly points: number;
  readonly terms: Readonly<Record<keyof MenuCosts, { readonly amount: number; readonly points: number }>>;
  /** How each day is best served, by day index. */
  readonly served: readonly DayServed[];
};

/**
 * Scores any menu, however it was found, from the model alone.
 *
 * @param opened the pouches of the open meals; what is kept is added
 * @returns the score with each term in its own unit: kcal, times, kg h, g, years
 */
export function scoreMenu(model: MenuModel, opened: readonly OpenedAt[]): MenuScore {
  const { menuCosts } = model.settings;
  const all = [...model.kept, ...opened];
  const served = model.days.map((day) => {
    const own = all.filter(({ slot }) => day.slots.includes(slot));
    return serveDay(
      {
        targetKcal: day.targetKcal,
        ceilingKcal: day.ceilingKcal,
        floorKcal: day.slots.map((slot) => model.slots[slot]?.floorKcal ?? []),
        mostKcal: day.slots.map((slot) => model.slots[slot]?.mostKcal ?? []),
      },
      own.map(({ slot, lot, pouches }) => ({
        meal: day.slots.indexOf(slot),
        kcal: (model.lots[lot]?.kcal ?? 0) * pouches,
        feeds: model.lots[lot]?.feeds ?? [],
      })),
      menuCosts,
    );
  });
  const sumServed = (key: 'missingKcal' | 'smallMealKcal' | 'leftOverKcal' | 'aboveCeilingKcal') =>
    served.reduce((sum, day) => sum + day[key], 0);
  const sumOpened = (amount: (at: OpenedAt) => number) =>
    all.reduce((sum, at) => sum + amount(at) * at.pouches, 0);
  const burdenOf = ({ slot, lot }: OpenedAt) => {
    const [of, burden] = [model.lots[lot], model.burdens[slot]];
    if (!of || !burden) throw new RangeError(`no lot ${lot} or meal ${slot} in the model`);
    return pouchBurden(of.lot, burden, model.walkedH);
  };
  const proteinG = model.days.reduce((sum, day) => {
    const lackG = all
      .filter(({ slot }) => day.slots.includes(slot))
      .reduce((lack, { lot, pouches }) => lack + (model.lots[lot]?.proteinLackG ?? 0) * pouches, 0);
    return sum + Math.max(0, lackG);
  }, 0);

  const amounts: Record<keyof MenuCosts, number> = {
    missingKcal: sumServed('missingKcal'),
    smallMealKcal: sumServed('smallMealKcal'),
    leftOverKcal: sumServed('leftOverKcal'),
    aboveCeilingKcal: sumServed('aboveCeilingKcal'),
    repeat: countRepeats(model, all),
    carriedKgH: sumOpened((at) => burdenOf(at).carriedKgH),
    fuelG: sumOpened((at) => burdenOf(at).fuelG),
    shelfLifeYear: sumOpened(({ lot }) => model.lots[lot]?.shelfLifeY ?? 0),
    proteinG,
  };
  const terms = Object.fromEntries(
    Object.entries(amounts).map(([key, amount]) => [
      key,
      { amount, points: amount * menuCosts[key as keyof MenuCosts] },
    ]),
  ) as MenuScore['terms'];
  return { points: Object.values(terms).reduce((sum, term) => sum + term.points, 0), terms, served };
}

/**
 * How often a recipe comes again too soon: each day with it after one within the days for which another is preferred, and each further meal of one day with it.
 */
export function countRepeats(model: MenuModel, opened: readonly OpenedAt[]): number {
  const { repeatAfterDays } = model.settings;
  if (repeatAfterDays === 0) return 0;
  const slotsOf = Map.groupBy(
    opened.filter(({ pouches }) => pouches > 0),
    ({ lot }) => model.lots[lot]?.recipe ?? -1,
  );
  let repeats = 0;
  for (const uses of slotsOf.values()) {
    const slots = new Set(uses.map(({ slot }) => slot));
    const days = new Set([...slots].map((slot) => model.slots[slot]?.dayIndex ?? -1));
    repeats += slots.size - days.size;
    for (const day of days)
      if (
        Array.from({ length: repeatAfterDays }, (_, back) => day - 1 - back).some((other) => days.has(other))
      )
        repeats += 1;
  }
  return repeats;
}

/** Which hard rules a menu breaks, in words; none for a menu that may be eaten. */
export function brokenRules(model: MenuModel, opened: readonly OpenedAt[]): string[] {
  const broken: string[] = [];
  for (const lot of model.lots) {
    const used = opened.filter((at) => at.lot === lot.index).reduce((sum, at) => sum + at.pouches, 0);
    if (used > lot.stock)
      broken.push(
        say('{used} pouches of lot {code}, of which {free} are free', {
          used,
          code: lot.lot.code,
          free: lot.stock,
        }),
      );
  }
  for (const { slot, lot, pouches } of opened) {
    const at = model.slots[slot];
    const where = { meal: at ? say(MEAL_WORDS[at.meal]) : '', day: at?.day ?? 0, pouches };
    if (!Number.isInteger(pouches) || pouches < 0)
      broken.push(say('{pouches} pouches at the {meal} of day {day}', where));
    if (!at?.open) broken.push(say('the {meal} of day {day} is kept', where));
    if (pouches > (model.lots[lot]?.most[slot] ?? 0))
      broken.push(
        say('{pouches} pouches of lot {code} at the {meal} of day {day}', {
          ...where,
          code: model.lots[lot]?.lot.code ?? '',
        }),
      );
  }
  for (const slot of model.slots) {
    const recipes = new Set(
      opened
        .filter((at) => at.slot === slot.index && at.pouches > 0)
        .map(({ lot }) => model.lots[lot]?.recipe),
    );
    if (recipes.size > model.settings.maxRecipesPerMeal)
      broken.push(
        say('{recipes} recipes at the {meal} of day {day}', {
          recipes: recipes.size,
          meal: say(MEAL_WORDS[slot.meal]),
          day: slot.day,
        }),
      );
  }
  return broken;
}
