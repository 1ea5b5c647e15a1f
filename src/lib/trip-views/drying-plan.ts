import { showDay } from '../texts/locale.ts';
import { hoursText } from '../kitchen-views/batch.ts';
import type { Estimate, ShoppingLine } from '../planning/model/trip-plan.ts';
import type {
  DryingLine,
  DryingNote,
  DryingPlan,
  PlannedLoad,
  PlannedRun,
  WhyToBuy,
} from '../planning/shortfall/plan-drying.ts';
import { fromCore, toCore } from '../planning/units/convert.ts';
import { wallText } from '../presentation/exclusion-words.ts';
import { friendlyAmount } from '../presentation/fractions.ts';
import { showMoney } from '../presentation/money.ts';
import { show, unitOf, type UnitSystem } from '../presentation/show.ts';
import { MEAL_WORDS } from '../presentation/code-words.ts';
import { say, sayRich, type RichText } from '../texts/say.ts';
import { eatersText } from './missing.ts';

/** @returns for whom and when a line of the shopping list is: "dinner for Ada, Ben", "lunch for everyone" */
export const lineName = (
  { meal, forEaters }: Pick<ShoppingLine, 'meal' | 'forEaters'>,
  partySize: number,
): string =>
  say('{meal} for {eaters}', { meal: say(MEAL_WORDS[meal]), eaters: eatersText(forEaters, partySize) });

/** @returns hours with their range: "26 h (20 h to 34 h)" */
export function hoursWithRange({ value, low, high }: Estimate): string {
  return say('{hours} ({low} to {high})', {
    hours: hoursText({ value }),
    low: hoursText({ value: low }),
    high: hoursText({ value: high }),
  });
}

/** @returns what is done with a run, and when. */
export function runText(run: PlannedRun): RichText {
  const values = {
    trays: run.trays,
    trayCount: run.trayCount,
    hours: hoursWithRange(run.hours),
    unload: showDay(run.unloadOn),
    date: showDay(run.readyOn),
  };
  return run.unloadOn === run.readyOn
    ? sayRich(
        '{trays} of {trayCount, plural, one {# tray} other {# trays}}, {hours}. Unload, test and seal on <strong>{date}</strong>.',
        values,
      )
    : sayRich(
        '{trays} of {trayCount, plural, one {# tray} other {# trays}}, {hours}. Unload and test on <strong>{unload}</strong>, condition it in a jar, and seal on <strong>{date}</strong>.',
        values,
      );
}

/** @returns how much of a recipe is cooked: "1/2 of the recipe", "the recipe once", "1 1/4 times the recipe" */
export function timesText(times: number): string {
  if (times === 1) return say('the recipe once');
  return times < 1
    ? say('{part} of the recipe', { part: friendlyAmount(times) })
    : say('{times} times the recipe', { times: friendlyAmount(times) });
}

/** Where the batch of a load is begun, with what is planned filled in. */
export function batchHref({ dryer }: PlannedRun, { recipeId, timesCooked }: PlannedLoad): string {
  return `/kitchen/batches/new?${new URLSearchParams({ recipe: recipeId, times: String(timesCooked), dryer })}`;
}

/** Which lines of the shopping list a load is for. */
export function loadIsFor({ shares }: PlannedLoad, lines: readonly DryingLine[], partySize: number): string {
  return shares
    .flatMap(({ line }) => lines[line] ?? [])
    .map((line) => lineName(line, partySize))
    .join('; ');
}

/** Steps in which a shop's scale or packet is read, by the amount from which they hold; in g and oz (common practice). */
const BUYING_STEPS: Readonly<Record<UnitSystem, readonly (readonly [from: number, step: number])[]>> = {
  metric: [
    [1000, 50],
    [100, 10],
    [0, 1],
  ],
  us: [
    [16, 1],
    [0, 0.5],
  ],
};

/** @returns a weight to buy, rounded up to what can be weighed out: "1,250 g", "9.5 oz"; with pieces where they can be counted */
export function amountToBuy(
  { weightG, pieces }: { readonly weightG: number; readonly pieces?: number },
  system: UnitSystem,
): string {
  const unit = unitOf('food', system);
  const amount = fromCore(weightG, unit);
  const step = BUYING_STEPS[system].find(([from]) => amount >= from)?.[1] ?? 1;
  const rounded = show(toCore(Math.ceil(amount / step - 1e-6) * step, unit), 'food', system);
  return pieces === undefined
    ? rounded
    : say('{weight}, about {pieces, plural, one {# piece} other {# pieces}}', {
        weight: rounded,
        pieces: Math.ceil(pieces - 1e-6),
      });
}

/** @returns the sum of the groceries, and for which there is no price; `undefined` where there is none at all */
export function groceriesCost(
  { groceries, costMinor, unpriced }: DryingPlan,
  currency: string,
): string | undefined {
  if (unpriced.length === groceries.length) return undefined;
  const money = showMoney(Math.round(costMinor), currency);
  return unpriced.length === 0
    ? say('Together {money}.', { money })
    : say('Together {money}, without {foods}, of which no price is known.', {
        money,
        foods: unpriced.join(', '),
      });
}

/** @returns why a line is not dried but bought, as a sentence */
export function whyToBuyText(why: WhyToBuy, meal: ShoppingLine['meal'], readyBy: string): string {
  switch (why.kind) {
    case 'no recipe':
      return say('No recipe of the kitchen is for {meal}.', { meal: say(MEAL_WORDS[meal]) });
    case 'recipe gone':
      return say('The kitchen has no recipe "{recipe}", so no run is planned for it.', {
        recipe: why.recipe,
      });
    case 'no dryer':
      return say('The equipment lists no dryer.');
    case 'not suited':
      return say('No recipe for {meal} suits: {recipes}.', {
        meal: say(MEAL_WORDS[meal]),
        recipes: why.recipes.map(({ recipe, because }) => `${recipe} ${wallText(because)}`).join('; '),
      });
    case 'too large':
      return say(
        'Even a quarter of the recipe does not fit in a dryer: {recipes}. Make a smaller recipe of it.',
        { recipes: why.recipes.join(', ') },
      );
    case 'no time':
      return say('No further run can be sealed by {date}.', { date: showDay(readyBy) });
  }
}

/** @returns how many runs there are, and on how many days there is work */
export function workText({ runs, workDays, readyBy }: DryingPlan): string {
  const days = workDays.map((date) => showDay(date)).join(' · ');
  return say(
    '{runs, plural, one {# run} other {# runs}}, work on {count, plural, one {# day} other {# days}} ({days}). All is sealed by {date}.',
    { runs: runs.length, count: workDays.length, days, date: showDay(readyBy) },
  );
}

/** @returns the trays of a load: "3 trays of about 950 g" */
export const traysText = ({ trays, trayG }: PlannedLoad, system: UnitSystem): string =>
  say('{trays, plural, one {# tray} other {# trays}} of about {weight}', {
    trays,
    weight: show(trayG, 'food', system),
  });

/** @returns what the cook should know of a recipe. */
export function dryingNoteText({ code, recipe }: DryingNote): string {
  switch (code) {
    case 'recipe-unfinished':
      return say(
        '"{recipe}" is left out until its recipe is fixed: it has no energy yet, or its weights do not add up.',
        { recipe },
      );
    case 'high-in-fat':
      return say(
        '"{recipe}" is high in fat, which does not dry or keep well. Drain or rinse it off, use leaner cuts, or eat it soon.',
        { recipe },
      );
  }
}
