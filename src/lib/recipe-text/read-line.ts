import { ALLERGENS } from '../planning/model/allergens.ts';
import type { Food } from '../planning/model/composition.ts';
import { matchFood, type FoodMatch } from '../foods/find-food.ts';
import { foodWords } from '../foods/food-words.ts';
import { kitchenFoods } from '../foods/kitchen-foods.ts';
import { amountAt, plainLine, unitOf, type Amount, type Unit } from './amounts.ts';
import { isDrainedRow, ofTin, weigh, type Grams, type Size } from './weigh.ts';

/** Why a line is left to settle. */
export type Unsettled = 'food unknown' | 'food unsure' | 'no amount' | 'weight unknown';

/** One line of a list of ingredients, and what it was taken for. */
export type IngredientLine = {
  /** As it was written. */
  readonly text: string;
  /** What is left of it when amount and unit are taken off. */
  readonly foodText: string;
  /** What it was taken for; of a line that is left to settle, the nearest guess. */
  readonly food?: Food;
  readonly grams?: Grams;
  readonly unsettled?: Unsettled;
};

type Measured = {
  readonly amount?: Amount;
  readonly unit?: Unit;
  readonly size?: Size;
  readonly fullness?: number;
  /** Weight or volume of each container, or of all. */
  readonly each?: { readonly amount: Amount; readonly unit: Unit };
  readonly all?: { readonly amount: Amount; readonly unit: Unit };
  readonly rest: string;
};

const SIZES: Readonly<Record<string, Size>> = {
  small: 'small',
  little: 'small',
  medium: 'medium',
  large: 'large',
  big: 'large',
  jumbo: 'large',
  'medium-sized': 'medium',
  'thumb-sized': 'medium',
  'large-sized': 'large',
  'small-sized': 'small',
  klein: 'small',
  kleine: 'small',
  kleiner: 'small',
  kleines: 'small',
  kleinen: 'small',
  mittel: 'medium',
  mittlere: 'medium',
  mittelgroße: 'medium',
  mittelgroßer: 'medium',
  mittelgroßen: 'medium',
  mittleren: 'medium',
  mittlerer: 'medium',
  groß: 'large',
  große: 'large',
  großer: 'large',
  großes: 'large',
  großen: 'large',
  grosse: 'large',
  gross: 'large',
  grosser: 'large',
  grosses: 'large',
};
/** How full a spoon or cup is (common practice). */
const FULLNESS: Readonly<Record<string, number>> = {
  heaped: 1.5,
  heaping: 1.5,
  rounded: 1.25,
  generous: 1.15,
  level: 1,
  scant: 0.9,
  packed: 1,
  gehäuft: 1.5,
  gehäufte: 1.5,
  gehäufter: 1.5,
  gehäuften: 1.5,
  gestrichen: 1,
  gestrichene: 1,
  gestrichener: 1,
  gestrichenen: 1,
  knapper: 0.9,
  good: 1.15,
  guter: 1.15,
  fresh: 1,
  whole: 1,
  level_: 1,
  ripe: 1,
  fat: 1,
  frische: 1,
  frischer: 1,
  thick: 1,
  thin: 1,
  dicke: 1,
  dünne: 1,
  tall: 1,
  standard: 1,
  sized: 1,
  geh: 1.5,
  gestr: 1,
};

/** @returns the text without the marks that it ends with */
const withoutEnd = (text: string, marks: string): string => {
  let to = text.length;
  while (to > 0 && marks.includes(text[to - 1]!)) to -= 1;
  return text.slice(0, to);
};

const skipBlank = (text: string, at: number): number => {
  let to = at;
  while (text[to] === ' ') to += 1;
  return to;
};

/** A weight or a volume at a place: "400 g", "14-oz", "15 ounce", "2.5kg". */
function sizeAt(text: string, from: number): { amount: Amount; unit: Unit; to: number } | undefined {
  const number = amountAt(text, from);
  if (!number) return undefined;
  const gap = /[ -]?/y;
  gap.lastIndex = number.to;
  const at = number.to + (gap.exec(text)?.[0].length ?? 0);
  const fluid = /fl\.? ?oz\.?|fluid ounces?/iy;
  fluid.lastIndex = at;
  const fl = fluid.exec(text);
  if (fl) return { amount: number.amount, unit: unitOf('floz')!, to: at + fl[0].length };
  const word = /\p{L}+\.?/uy;
  word.lastIndex = at;
  const written = word.exec(text)?.[0];
  const unit = written === undefined ? undefined : unitOf(written);
  return unit && unit.kind !== 'count'
    ? { amount: number.amount, unit, to: at + written!.length }
    : undefined;
}

/** What stands in brackets from a place on. */
function bracketsAt(text: string, at: number): { inside: string; to: number } | undefined {
  if (text[at] !== '(' && text[at] !== '[') return undefined;
  const close = text.indexOf(text[at] === '(' ? ')' : ']', at);
  return close < 0 ? undefined : { inside: text.slice(at + 1, close), to: close + 1 };
}

const sizeIn = (inside: string) => {
  const words = inside.replace(
    /^(?:(?:about|approx|approximately|ca|etwa|weighing|je|a|each|total|insgesamt|abtropfgewicht|net|drained weight)\b[.:]? ?|à ?)/i,
    '',
  );
  return sizeAt(words, 0);
};

const isContainer = (unit: Unit | undefined): boolean =>
  unit?.kind === 'count' &&
  [
    'tin',
    'jar',
    'packet',
    'sachet',
    'bottle',
    'carton',
    'tub',
    'bag',
    'box',
    'block',
    'ball',
    'bar',
    'piece',
    'fillet',
    'breast',
    'thigh',
    'steak',
    'chop',
    'sheet',
    'cube',
    'link',
  ].includes(unit.name);

/** What the food is stirred into, which is another line of the list, or is not weighed. */
const MIXED_WITH =
  / ?,? (?:mixed|dissolved|whisked|blended|stirred|combined|made up|verrührt|angerührt|gelöst|aufgelöst) (?:with|in|into|mit|together with) .*$/i;

/** Words that are one of something where no number stands before them. */
const ONE_OF =
  /^(?:(?:small|large|big|good|generous|kleine|kleiner|große|großer|gute|thumb-sized|thumb sized) )?(?:pinch|handful|bunch|knob|drizzle|splash|dash|squeeze|glug|sprinkle|sprinkling|thumb|piece|prise|bund|schuss|handvoll|messerspitze|msp|stück|spritzer|zweig|sprig|packet|pack|bag|jar|tub|tin|can)\b/i;

/** Reads the amount that a line begins with, its unit and its size. */
function measureAtStart(text: string): Measured | undefined {
  const first =
    amountAt(text, 0) ?? (ONE_OF.test(text) ? { amount: { value: 1, low: 1, high: 1 }, to: 0 } : undefined);
  if (!first) return undefined;
  let { amount } = first;
  let at = first.to;
  let each: Measured['each'];
  let all: Measured['all'];

  // "2 x 400 g tins", "2x400g"
  const by = / ?x ?(?=\d)/iy;
  by.lastIndex = at;
  const factor = by.exec(text);
  if (factor) {
    const size = sizeAt(text, at + factor[0].length);
    if (size) {
      each = size;
      at = size.to;
    }
  } else {
    const times = / ?x (?=\p{L})/iuy;
    times.lastIndex = at;
    at += times.exec(text)?.[0].length ?? 0;
  }

  let size: Size | undefined;
  let fullness = 1;
  let unit: Unit | undefined;
  for (let guard = 0; guard < 6; guard += 1) {
    at = skipBlank(text, at);
    const brackets = bracketsAt(text, at);
    if (brackets) {
      const inside = sizeIn(brackets.inside);
      if (!inside) break;
      const isAll =
        /total|insgesamt|zusammen|about|ca\.?|approx/i.test(brackets.inside) &&
        !/each|je\b|à/i.test(brackets.inside);
      if (unit && unit.kind !== 'count') all ??= inside;
      else if (isAll && unit && !isContainer(unit)) all = inside;
      else if (isAll && /total|insgesamt|zusammen/i.test(brackets.inside)) all = inside;
      else each ??= inside;
      at = brackets.to;
      continue;
    }
    if (unit) break;
    // "1 14-oz can", "a 400g tin": a size after the count
    if (!each) {
      const inner = sizeAt(text, at);
      const before = text[at - 1] === ' ' || at === first.to;
      if (
        inner &&
        before &&
        at > first.to &&
        /^[ -]*(?:tin|can|jar|pack|packet|packets|package|bag|box|bottle|carton|tub|block|dose|glas|packung|becher|container|ball|bar|fillet|steak|piece|cans|tins|jars|packages|pkg)/i.test(
          text.slice(inner.to),
        )
      ) {
        each = inner;
        at = inner.to;
        continue;
      }
    }
    const word = /-?([\p{L}]+(?:-sized)?)\.?/uy;
    word.lastIndex = at;
    const found = word.exec(text);
    if (!found) break;
    const written = found[1]!;
    const low = written.toLowerCase();
    const fluid = /fl\.? ?oz\b\.?|fluid ounces?/iy;
    fluid.lastIndex = at;
    const fl = fluid.exec(text);
    if (fl) {
      unit = unitOf('floz');
      at += fl[0].length;
      continue;
    }
    // A German adjective or an English one before the unit, but not the food itself.
    if (SIZES[low] && unit === undefined) {
      size = SIZES[low];
      at += found[0].length;
      continue;
    }
    const known = unitOf(written);
    const next = skipBlank(text, at + found[0].length);
    const hasMore = next < text.length;
    if (known && !(known.kind === 'count' && !hasMore)) {
      // "2 cloves" alone is the spice, "1 leaf lettuce" a food.
      unit = known;
      at += found[0].length;
      continue;
    }
    if (FULLNESS[low] !== undefined) {
      const ahead = /[\p{L}]+/uy;
      ahead.lastIndex = next;
      const after = ahead.exec(text)?.[0];
      if (after && (unitOf(after) || FULLNESS[after.toLowerCase()] !== undefined)) {
        fullness *= FULLNESS[low];
        at += found[0].length;
        continue;
      }
    }
    break;
  }

  // "a 400 g tin" without the article: the weight is that of the tin.
  const container =
    /(?:tins?|cans?|jars?|packs?|packets?|packages?|pkg|bags?|box(?:es)?|bottles?|cartons?|tubs?|blocks?|dosen?|gläser|glas|packung(?:en)?|becher)\b\.? ?(?:of )?/iuy;
  container.lastIndex = skipBlank(text, at);
  const holds = unit && unit.kind !== 'count' ? container.exec(text) : null;
  if (holds && unit) {
    each ??= { amount, unit };
    amount = { value: 1, low: 1, high: 1 };
    unit = unitOf(holds[0].trim().split(/[ .]/)[0]!);
    at = container.lastIndex;
  }

  // "200 g / 7 oz", "2 tbsp plus 1 tsp", "1 lb 2 oz"
  at = skipBlank(text, at);
  if (unit && unit.kind !== 'count') {
    const slash = /[/|] ?|(?:or|oder) (?=\d)/iy;
    slash.lastIndex = at;
    const other = slash.exec(text);
    const second = other && sizeAt(text, at + other[0].length);
    if (second) at = second.to;
    const plus = /(?:\+|plus|and|und|&) ?/iy;
    plus.lastIndex = skipBlank(text, at);
    const more = plus.exec(text);
    const added = more
      ? sizeAt(text, skipBlank(text, at) + more[0].length)
      : sizeAt(text, skipBlank(text, at));
    if (added && added.unit.kind === unit.kind && (more || unit.name !== added.unit.name)) {
      const share =
        added.unit.kind === 'mass' && unit.kind === 'mass'
          ? added.unit.g / unit.g
          : added.unit.kind === 'volume' && unit.kind === 'volume'
            ? added.unit.ml / unit.ml
            : 0;
      amount = {
        value: amount.value + added.amount.value * share,
        low: amount.low + added.amount.low * share,
        high: amount.high + added.amount.high * share,
      };
      at = added.to;
    }
    at = skipBlank(text, at);
    const brackets = bracketsAt(text, at);
    const inside = brackets && sizeIn(brackets.inside);
    if (brackets && inside) {
      all ??= inside;
      at = brackets.to;
    }
  }
  const rest = text
    .slice(at)
    .replace(MIXED_WITH, '')
    .replace(/^[ ,;:.-]+/, '')
    .replace(/^(?:of|von|vom|an) /i, '')
    .replace(/^(?:a|an|the|die|der|das) /i, '');
  return {
    amount,
    ...(unit && { unit }),
    ...(size && { size }),
    fullness,
    ...(each && { each }),
    ...(all && { all }),
    rest,
  };
}

/** An amount that stands after the food: "Onions - 2", "Mehl: 500 g", "Butter 50g". */
function measureAtEnd(text: string): Measured | undefined {
  for (let at = text.length - 1; at > 1; at -= 1) {
    if (!/[\d]/.test(text[at]!) || /[\d.,/]/.test(text[at - 1] ?? '')) continue;
    if (!/[ (:,=-]/.test(text[at - 1] ?? '')) continue;
    const size = sizeAt(text, at);
    const number = size ? undefined : amountAt(text, at);
    const to = size?.to ?? number?.to ?? 0;
    let tail = text.slice(to).trim();
    let unit = size?.unit;
    if (!unit) {
      const word = /^\p{L}+/u.exec(tail)?.[0];
      const count = word === undefined ? undefined : unitOf(word);
      if (count) {
        unit = count;
        tail = tail.slice(word!.length).trim();
      }
    }
    if (!(size ?? number) || !/^[).,; ]*$/.test(tail)) continue;
    const before = text[at - 1];
    if (!size && !unit && before === ',') continue;
    return {
      amount: (size ?? number)!.amount,
      ...(unit && { unit }),
      fullness: 1,
      rest: withoutEnd(text.slice(0, at), ' (:,;=-'),
    };
  }
  return undefined;
}

const CHANGES =
  /\b(?:cooked|canned|tinned|powdered|powder|smoked|pickled|dried|gekocht|gekochter?|getrocknete?r?|geräucherte?r?)\b/i;

/** Whether words beside the food name another one that may hold what it does not: "beef, browned in butter". */
function addsAllergens(extra: string, food: Food): boolean {
  const words = new Set(foodWords(extra));
  return (
    words.size > 0 &&
    kitchenFoods().names.some(
      ({ words: name, food: other }) =>
        other !== food &&
        name.every((word) => words.has(word)) &&
        (other.allergens === undefined
          ? food.allergens !== undefined
          : other.allergens.some((code) => !food.allergens?.includes(code))),
    )
  );
}

/** The food that words mean: with what stands after the comma, without it, then without what stands in brackets. */
function foodOf(
  text: string,
  own: readonly Food[],
  isTinned: boolean,
  asPiece: boolean,
): FoodMatch | undefined {
  const bare = text
    .replace(/\([^()]*\)|\[[^[\]]*\]/g, ' ')
    .replace(/[*"]+/g, ' ')
    .replace(/ +/g, ' ')
    .trim();
  const inBrackets = [...text.matchAll(/\(([^()]*)\)/g)].map(([, inside]) => inside).join(' ');
  const [head = '', ...tails] = bare.split(/[,;]| - /);
  const tail = tails.join(' ');
  const forms = isTinned
    ? [`tinned ${head} ${tail}`, `tinned ${head}`, `${head} ${tail}`, head]
    : asPiece
      ? [`${head} ${tail}`, head]
      : [`${head} ${tail}`, head];
  let guess: FoodMatch | undefined;
  for (const [index, form] of forms.entries()) {
    if (index === forms.length - 1 && CHANGES.test(tail)) continue;
    const found = matchFood(form, own);
    // Nobody sells dry beans in a tin.
    if (
      isTinned &&
      found &&
      found.food.composition.waterG < 20 &&
      kitchenFoods().groups.get(found.food) === 'Legumes and Legume Products'
    )
      continue;
    if (found?.sure)
      return form === head || form === `tinned ${head}`
        ? { ...found, sure: !addsAllergens(`${tail} ${inBrackets}`, found.food) }
        : { ...found, sure: !addsAllergens(inBrackets, found.food) };
    if (!guess || (index === forms.length - 1 && found)) guess ??= found;
  }
  return guess;
}

/** "red or white onion": the first that is a food; what the others contain counts with it. */
function withAlternatives(
  text: string,
  own: readonly Food[],
  isTinned: boolean,
  asPiece: boolean,
): FoodMatch | undefined {
  const options = text.split(/ (?:or|oder|bzw\.?|and\/or|und\/oder) | ?\/ ?(?=\p{L})/u);
  if (options.length === 1) return foodOf(text, own, isTinned, asPiece);
  const whole = foodOf(text, own, isTinned, asPiece);
  const found = options.flatMap((option) => {
    const bare = measureAtStart(option)?.rest ?? option;
    const match = foodOf(bare, own, isTinned, asPiece);
    return match?.sure ? [match] : [];
  });
  const [first] = found;
  if (!first) return whole;
  // Of several foods, what any of them contains may be in the dish; one that is not understood may hold anything.
  const isOpen =
    found.length < options.filter((option) => !isAdjective(option)).length ||
    found.some(({ food }) => food.allergens === undefined);
  if (found.every(({ food }) => food === first.food)) return first;
  const { allergens, ...rest } = first.food;
  const contained = new Set([...(allergens ?? []), ...found.flatMap(({ food }) => food.allergens ?? [])]);
  const diets = first.food.diets.filter((diet) => found.every(({ food }) => food.diets.includes(diet)));
  const food: Food = {
    ...rest,
    diets,
    ...(!isOpen && { allergens: ALLERGENS.filter((code) => contained.has(code)) }),
  };
  return { ...first, food };
}

const isAdjective = (words: string): boolean =>
  /^(?:red|white|green|yellow|brown|fresh|dried|frozen|small|large|medium|vegetable|chicken|beef|light|dark|canned|tinned|more|less|to taste|more to taste|as needed|similar|other.*|your.*|rote|weiße|grüne|gelbe)$/i.test(
    words.trim(),
  );

/** Juice or rind of a fruit that is counted: "juice of 1/2 lemon", "zest of 2 limes", "Saft einer Zitrone", "1 lemon, juiced". */
const PART_OF_FRUIT =
  /^(?:the |freshly |fresh |squeezed |finely |grated |saft und |der |geriebene )*(juice|zest|rind|peel|saft|abrieb|schale)(?: (?:and|und|&) (?:grated |finely )*(juice|zest|rind|saft|abrieb|schale))?(?: (?:of|from|von|aus))? /i;
const FRUIT = /\b(lemon|lime|orange|zitrone|limette|orange)n?s?\b/i;

function partOfFruit(text: string): string | undefined {
  const start = PART_OF_FRUIT.exec(text);
  const fruit = FRUIT.exec(text);
  if (start && fruit) {
    const isJuice = /juice|saft/i.test(`${start[1]} ${start[2] ?? ''}`);
    const rest = text.slice(start[0].length);
    const amount = amountAt(rest, 0);
    const called = fruit[1]!.toLowerCase().replace('zitrone', 'lemon').replace('limette', 'lime');
    const stated = amount ? rest.slice(0, amount.to) : '1';
    return `${stated} ${called} ${isJuice ? 'juice' : 'zest'}`;
  }
  const tail =
    fruit &&
    /, ?(?:juiced|juice only|zested|juice of|zest only|(?:finely )?grated zest|zest and juice|juice and zest|zested and juiced|juiced and zested|saft|ausgepresst|den saft)/i.exec(
      text,
    );
  if (fruit && tail && !/juice|zest|saft/i.test(text.slice(0, tail.index))) {
    const head = text.slice(0, tail.index);
    return `${head} ${/juice|saft|ausgepresst/i.test(tail[0]) ? 'juice' : 'zest'}`;
  }
  return undefined;
}

/** What is taken where no amount is stated, g (common practice): to taste, for frying, to garnish. */
function toTaste(food: Food, servings: number | undefined): Grams | undefined {
  const group = kitchenFoods().groups.get(food);
  if (food.number === '02047') {
    const each = servings ?? 4;
    return { value: each, low: 0, high: 2 * each };
  }
  if (/^(?:02044|02045|02049|02063|02064|11297|11165|11156)$/.test(food.number ?? ''))
    return { value: 5, low: 0, high: 20 };
  if (group === 'Spices and Herbs' || /spices|herbs|seasoning|^peppers, hot/i.test(food.name))
    return { value: 0.5, low: 0, high: 3 };
  if (group === 'Fats and Oils' || /^Butter/.test(food.name)) return { value: 10, low: 0, high: 30 };
  if (/^Water, tap/.test(food.name)) return { value: 0, low: 0, high: 0 };
  return undefined;
}

/** "garlic cloves", "celery stalks", "Knoblauchzehen": what is counted stands behind the food. */
function countedIn(rest: string): Unit | undefined {
  const head = rest.split(/[,;(]/)[0]!.trim();
  if (/stock pots?$/i.test(head)) return undefined;
  if (/knoblauchzehen?\b/i.test(head)) return { kind: 'count', name: 'clove' };
  const words = head.split(' ');
  const last = words.length > 1 ? unitOf(words.at(-1)!) : undefined;
  return last?.kind === 'count' &&
    !['head', 'half', 'inch', 'cm', 'cube', 'strip', 'piece', 'stick'].includes(last.name)
    ? last
    : last?.kind === 'count' && last.name === 'stick' && !/^(?:bread|fish|crab)/i.test(head)
      ? last
      : undefined;
}

/** Marks of a list, and numbers of one: "- ", "* ", "• ", "[ ] ", "1. " before a letter. */
export const withoutBullet = (text: string): string =>
  text
    .replace(/^(?:[-*•·▢☐◦‣+>–—]|\[[ x]?\]) */i, '')
    .replace(/^(?:[-*•·▢☐◦‣–—]) */, '')
    .replace(/^\d{1,2}[.)] (?=\p{L}|\d)/u, '');

/** What stands behind so many characters of a line is not looked at. */
const LONGEST_READ = 300;

/**
 * Reads one line of a list of ingredients: metric and US units, fractions, ranges, pieces, cups by the table's measures, tins; in
 * English and German.
 *
 * @param own foods of the user, by their names
 * @param servings of the recipe, for what is added to taste
 * @example readLine('1 large onion, chopped').grams // { value: 150, low: 135, high: 165 }
 */
export function readLine(written: string, own: readonly Food[] = [], servings?: number): IngredientLine {
  const text = written.trim();
  const plain = withoutBullet(plainLine(text.slice(0, LONGEST_READ)))
    .replace(/^(?:optional|ggf\.?|evtl\.?|n\. ?B\.?|nach Bedarf|nach Belieben)[:, ]+/i, '')
    .trim();
  const line = partOfFruit(plain) ?? plain;
  const start = measureAtStart(line);
  const atEnd = start && start.rest !== '' ? undefined : measureAtEnd(line);
  let measured: Measured = start && start.rest !== '' ? start : (atEnd ?? start ?? { rest: line });
  if (measured.rest === '' && measured.unit?.kind === 'count')
    measured = { ...measured, rest: measured.unit.name };
  // A weight in brackets behind the food is of all of it, or of each: "4 chicken breasts (about 600 g)".
  const behind = bracketsAt(measured.rest, measured.rest.indexOf('('));
  if (
    behind &&
    /\d/.test(behind.inside) &&
    !measured.all &&
    !measured.each &&
    measured.unit?.kind !== 'mass'
  ) {
    const size = sizeIn(behind.inside);
    if (size)
      measured = /each|je\b|à|apiece/i.test(behind.inside)
        ? { ...measured, each: size }
        : { ...measured, all: size };
  }
  if (!measured.amount && !measured.all) {
    const end = measureAtEnd(line);
    if (end) measured = end;
  }
  if (measured.amount && !measured.unit) {
    const counted = countedIn(measured.rest);
    if (counted) measured = { ...measured, unit: counted };
  }
  const { unit, size, fullness, each, all, rest } = measured;
  const isTinned =
    (unit?.kind === 'count' && unit.name === 'tin') || /\b(?:tins?|cans?|dosen?)\b/i.test(rest);
  const asPiece =
    measured.amount !== undefined && (unit === undefined || (unit.kind === 'count' && unit.name === 'piece'));
  const match = matchOf(rest, own, isTinned, asPiece, unit);
  if (!match) return { text, foodText: rest, unsettled: 'food unknown' };
  const { food } = match;
  const base = { text, foodText: rest, food };

  const amount = measured.amount ?? (all ? { value: 1, low: 1, high: 1 } : undefined);
  const grams = amount
    ? gramsOf(food, line, { amount, unit, size, fullness, each, all })
    : toTaste(food, servings);
  const stirredInto = MIXED_WITH.exec(line)?.[0] ?? '';
  if (!match.sure || addsAllergens(stirredInto, food))
    return { ...base, ...(grams && { grams }), unsettled: 'food unsure' };
  if (grams) return { ...base, grams };
  return { ...base, unsettled: amount ? 'weight unknown' : 'no amount' };
}

/** "Salt and freshly ground black pepper, to taste", and nothing else in the line. */
const ONLY_SALT_AND_PEPPER =
  /^(?:sea |kosher |table )?(?:salt|salz|meersalz|pepper|pfeffer) ?(?:&|\+|and|und|,) ?(?:(?:freshly|ground|black|cracked|white|schwarzer|frisch|gemahlener|sea|kosher) ){0,4}(?:pepper|salt|pfeffer|salz)(?:,? ?\(?(?:to taste|to season|as needed|nach geschmack|nach belieben|zum würzen|for seasoning)\)?)?$/i;

function matchOf(
  rest: string,
  own: readonly Food[],
  isTinned: boolean,
  asPiece: boolean,
  unit: Unit | undefined,
): FoodMatch | undefined {
  // "1 pepper, chopped" is no spice, "3 cloves" no garlic.
  const words =
    asPiece &&
    /^(?:\w+ )?peppers?\b(?!corn)/i.test(rest) &&
    !/black|white|chil|cayenne|bell|red|green|yellow|orange/i.test(rest)
      ? `bell ${rest}`
      : rest;
  if (
    unit?.kind === 'count' &&
    (unit.name === 'breast' ||
      unit.name === 'thigh' ||
      unit.name === 'drumstick' ||
      unit.name === 'fillet' ||
      unit.name === 'chop' ||
      unit.name === 'steak')
  ) {
    const part = withAlternatives(`${words.split(',')[0]!} ${unit.name}`, own, isTinned, asPiece);
    if (part?.sure) return part;
  }
  if (
    /\b(?:stock|bouillon) (?:cubes?|pots?)\b|brühwürfel/i.test(words) ||
    (unit?.kind === 'count' && unit.name === 'cube' && /stock|broth|bouillon|brühe/i.test(words))
  )
    return matchFood('stock cube', own);
  if (unit?.kind === 'count' && unit.name === 'stalk' && /^sellerie$/i.test(words.trim()))
    return matchFood('celery', own);
  if (ONLY_SALT_AND_PEPPER.test(words)) return matchFood(/salt|salz/i.test(words) ? 'salt' : 'pepper', own);
  const found = withAlternatives(words, own, isTinned, asPiece);
  if (found?.sure) return found;
  // "salt and pepper": of several foods in one line only spices and herbs are taken, since their weight is next to nothing.
  const several = words
    .replace(/,? (?:to taste|nach geschmack|nach belieben).*$/i, '')
    .split(/ (?:and|und|&) |, /);
  if (several.length > 1) {
    const all = several.map((part) => matchFood(part, own));
    if (
      all.every(
        (each) =>
          each?.sure &&
          kitchenFoods().groups.get(each.food) === 'Spices and Herbs' &&
          each.food.allergens?.length === 0,
      )
    )
      return all.find((each) => each?.food.number === '02047') ?? all[0];
  }
  return found;
}

/** What a line says of its amount. */
type Stated = {
  readonly amount: Amount;
  readonly unit: Unit | undefined;
  readonly size: Size | undefined;
  readonly fullness: number | undefined;
  readonly each: Measured['each'];
  readonly all: Measured['all'];
};

function gramsOf(
  food: Food,
  line: string,
  { amount, unit, size, fullness = 1, each, all }: Stated,
): Grams | undefined {
  const options = { words: line, size, fullness };
  if (unit?.kind === 'mass') return weigh(food, amount, unit, options);
  // "4 cups (32 ounces) broth": ounces of a liquid are fluid ones, so the cups say it better.
  const isFluid =
    unit?.kind === 'volume' && all?.unit.name.startsWith('o') === true && food.composition.waterG > 80;
  const stated = isFluid ? undefined : (all ?? each);
  if (stated) {
    const one = weigh(food, stated.amount, stated.unit, options);
    if (!one) return undefined;
    const total = all
      ? one
      : { value: one.value * amount.value, low: one.low * amount.low, high: one.high * amount.high };
    const isTin =
      unit?.kind === 'count' && (unit.name === 'tin' || unit.name === 'jar') && stated.unit.kind === 'mass';
    return isTin && isDrainedRow(food) && !/abtropfgewicht|drained weight/i.test(line)
      ? ofTin(food, total)
      : total;
  }
  return weigh(food, amount, unit, options);
}
