import type { Food } from '../planning/model/composition.ts';
import { matchFood } from '../foods/find-food.ts';
import { amountAt, plainLine, unitOf } from './amounts.ts';
import { readLine, withoutBullet, type IngredientLine } from './read-line.ts';

/** A recipe as people have it, read line by line. */
export type RecipeText = {
  /** The title, where the text has one. */
  readonly name?: string;
  /** Servings that the text says it makes; of a range the middle. */
  readonly servings?: number;
  readonly lines: readonly IngredientLine[];
  /** How it is cooked, line by line. */
  readonly method: readonly string[];
};

type Kind = 'blank' | 'heading' | 'ingredients' | 'method' | 'servings' | 'fact' | 'prose' | 'item';

const INGREDIENTS_HEADING =
  /^(?:the )?(?:ingredients?|ingredient list|what you(?:'ll)? need|you(?:'ll| will)? need|shopping list|zutaten(?:liste)?|das brauchst du|du brauchst)\b[^.]{0,40}$/i;
const METHOD_HEADING =
  /^(?:the )?(?:method|directions?|instructions?|preparation|procedure|steps?|how to make(?: it)?|to make|cooking instructions|preparation method|what to do|zubereitung|anleitung|so geht'?s|vorgehen|arbeitsschritte)\b[^.]{0,30}:?$/i;
const NOTES_HEADING =
  /^(?:notes?|tips?|cook'?s notes?|chef'?s notes?|recipe notes?|nutrition(?:al)?(?: information| facts)?|storage|equipment|variations?|hinweise?|tipps?|anmerkung(?:en)?|nährwerte?|for the trail|on the trail|at camp|in camp|drying|dehydrating)\b[^.]{0,30}:?$/i;
const FACT =
  /^(?:prep(?:aration)?(?: time)?|cook(?:ing)?(?: time)?|total(?: time)?|ready in|active time|difficulty|course|cuisine|category|author|source|rating|calories|kcal|energy|time|level|oven|temperature|keywords?|tags?|vorbereitung(?:szeit)?|kochzeit|garzeit|backzeit|arbeitszeit|gesamtzeit|zubereitungszeit|schwierigkeit(?:sgrad)?|quelle|ruhezeit|published|recipe by|by|von)\b ?(?:[:=-]|\d|about|ca)/i;
/** "1 hr", "20 mins" alone. */
const DURATION = /^\d[\d -]{0,6} ?(?:hr|hrs|hours?|mins?|minutes?|h|min|std|stunden?|minuten)\b.{0,20}$/i;
const LINK = /https?:\/\/|www\./i;

const SERVINGS: readonly RegExp[] = [
  /\b(?:serves|serving size|servings|feeds|yields?|makes|portions?|portionen|personen|ergibt|reicht für|für|menge für|for)\b[ :=-]*(?:about |approx\.? |ca\.? |etwa )?([\p{L}\d][^,;]*)/iu,
  /(.{1,16}?) (?:servings?|portions?|portionen|personen|people|persons|serves|helpings|bowls)\b/iu,
];
const COUNTED =
  /servings?|portions?|portionen|personen|people|persons|helpings|bowls|serves|feeds|adults|hikers|esser/i;

/** @returns how many servings a line says the recipe makes; `undefined` where it does not */
export function servingsOf(line: string): number | undefined {
  const plain = plainLine(line);
  if (plain.length > 80) return undefined;
  const bare = plain.replaceAll(/[#*_]/g, ' ').trim();
  const alone =
    /^(?:for|für|serves) (\d{1,3}(?: ?- ?\d{1,3})?|one|two|three|four|five|six|eight|ten|twelve|ein(?:e|en)?|zwei|drei|vier|fünf|sechs|acht)(?: (?:people|persons|personen|hikers|adults|erwachsene|leute))?:?$/i.exec(
      bare,
    );
  if (alone) return amountAt(alone[1]!.replaceAll(' ', ''), 0)?.amount.value;
  const says =
    /^(?:recipe )?(?:serves|servings?|feeds|yields?|makes|portionen?|personen|ergibt|reicht für|menge für|serving size)\b/i.test(
      bare,
    );
  const isFor =
    /^(?:(?:zutaten |ingredients )?(?:für|for)) /i.test(bare) ||
    /\((?:serves|makes|feeds|für|for) /i.test(bare);
  const counts =
    /\d ?-?(?:servings?|portions?|portionen|personen|people|persons|helpings|hungry)\b/i.test(bare) ||
    /^(?:one|two|three|four|five|six|eight|ten|vier|zwei|sechs) (?:servings|portions|portionen|personen)/i.test(
      bare,
    );
  if (!says && !isFor && !counts) return undefined;
  if (!says && !COUNTED.test(bare) && !/\((?:serves|makes|feeds)/i.test(bare)) return undefined;
  for (const pattern of SERVINGS) {
    const found = pattern.exec(bare);
    const words = found?.[1]?.trim();
    if (words === undefined) continue;
    const start =
      /\d|\b(?:one|two|three|four|five|six|seven|eight|nine|ten|twelve|ein|eine|zwei|drei|vier|fünf|sechs|acht)\b/i.exec(
        words,
      );
    const amount = start ? amountAt(words, start.index) : undefined;
    if (amount && amount.amount.value > 0 && amount.amount.value <= 1000) {
      const after = words.slice(amount.to);
      // "Makes 1.5 litres", "Makes one 23 cm cake"
      const unit = /^[ -]?(\p{L}+)/u.exec(after)?.[1];
      const measured = unit === undefined ? undefined : unitOf(unit);
      if (measured && measured.kind !== 'count') continue;
      return amount.amount.value;
    }
  }
  return undefined;
}

/** Words that sentences of a method begin with. */
const VERBS = new Set(
  `add adjust allow arrange assemble bake baste beat blanch blend blitz boil braise bring broil brown brush build carefully check chill chop coat combine
  continue cook cool core cover cream crumble crush cube cut deglaze dehydrate dice dip discard dissolve divide drain drizzle drop dry dust eat enjoy
  fill finally finish first flip fluff fold form freeze fry garnish gently grate grease grill grind halve heat if in increase
  keep knead ladle lay leave let lift line lower make marinate mash meanwhile measure melt microwave mix mince next note on once
  open pack parboil peel place plate poach pour preheat prepare press process pulse puree put quarter rehydrate reduce refrigerate reheat remove repeat reserve
  rest return rinse roast roll rub run saute sauté scatter scoop score scrape scrub seal sear season separate serve set shake shape shred sift simmer
  skim slice slow soak soften spoon spread sprinkle squeeze stand start steam stew stir store strain stuff sweat swirl take tear taste tent then thin
  tip to toast top toss transfer trim try turn uncover use wait warm wash watch weigh when whip whisk wilt wipe wrap you your after before while
  this these it store for with as at until
  alles anbraten anschließend auf aufkochen backen bei braten danach dann das den der die dünsten ein einen erhitzen etwas fein gießen hinzufügen im in inzwischen kochen
  knoblauch köcheln lassen mit nach nun öl reis servieren schälen schneiden vorheizen wasser während zuerst zum zunächst zwiebel zwiebeln würzen zugeben`.split(
    /\s+/,
  ),
);
/** Verbs that names of foods begin with as well: "dry roasted peanuts", "toast". */
const ALSO_NOUNS = new Set(
  'dry roast toast cool warm stuff season store grill thin core top sweet mash stock cream'.split(' '),
);
const GERMAN_VERB =
  /\b(?:anbraten|braten|kochen|köcheln|lassen|schneiden|schälen|hacken|würfeln|geben|zugeben|hinzufügen|hinzugeben|erhitzen|vermengen|verrühren|rühren|unterrühren|servieren|würzen|abschmecken|backen|vorheizen|ablöschen|dünsten|garen|gießen|abgießen|bestreuen|trocknen|mischen|pürieren|einweichen|aufkochen|ziehen|heizen)\b/i;

const beginsWithAmount = (line: string): boolean => {
  const start = amountAt(line, 0);
  return start !== undefined && !/^(?:a|an|one|some|few|half|ein|eine|einen|etwas|quarter)\b/i.test(line)
    ? true
    : start !== undefined &&
        /^(?:a|an|half|ein|eine|etwas|one|some|quarter)\b/i.test(line) &&
        line.split(' ').length <= 9;
};

/** A sentence of the method rather than a line of the list. */
function isSentence(line: string): boolean {
  if (/^step \d|^schritt \d|^\d+\. schritt/i.test(line)) return true;
  const words = line.split(' ');
  const first = words[0]!.toLowerCase().replace(/[^\p{L}]/gu, '');
  const ends = /[.!?]$/.test(line) && !/\b(?:approx|ca|etc|opt|tbsp|tsp|oz|lb|g)\.$/i.test(line);
  const inner = /[.!?] \p{Lu}/u.test(line);
  if (beginsWithAmount(line)) {
    // "2 minutes later, add …" is none of the list.
    return (
      /^\d[\d -]*(?:minutes?|mins?|hours?|minuten|stunden|min\b|h\b)/i.test(line) ||
      (words.length > 14 && ends && inner)
    );
  }
  if (inner && words.length > 6) return true;
  if (ALSO_NOUNS.has(first) && !ends && matchFood(line.split(',')[0]!)?.sure) return false;
  if (VERBS.has(first)) {
    if (words.length > 4 || ends) return !/^(?:salt|oil|pepper)/i.test(line) || ends;
    return matchFood(line)?.sure !== true;
  }
  if (
    GERMAN_VERB.test(line) &&
    (words.length > 4 || ends) &&
    !/^(?:öl|butter|fett|salz)? ?zum (?:braten|anbraten|kochen|backen)/i.test(line) &&
    !/zum (?:braten|anbraten|servieren|bestreuen|kochen|backen|würzen)$/i.test(line)
  )
    return true;
  return words.length > 12 && ends;
}

/** What a title may say of the servings: "Bolognese (serves 4)", "Tuna bake - serves 6", "Oats for two". */
const IN_TITLE =
  /[ ,(-]((?:serves|makes|feeds|for|für|ergibt) (?:about |ca\.? )?(?:\d{1,3}(?: ?- ?\d{1,3})?|one|two|three|four|five|six|eight|ten|twelve|zwei|drei|vier|fünf|sechs|acht)(?: [\p{L}]+)?)\)?$/iu;
const servingsInTitle = (title: string): number | undefined => {
  const said = IN_TITLE.exec(title)?.[1];
  const start = said === undefined ? -1 : said.search(/ (?=\d|[a-z]+)/i) + 1;
  return said === undefined
    ? undefined
    : amountAt(said.replace(/ (?:about|ca\.?)/i, ''), start)?.amount.value;
};

const titleOf = (line: string): string =>
  line
    .replace(/^#+ */, '')
    .replaceAll(/[*_]/g, '')
    .replace(/:$/, '')
    .replace(/^(?:recipe|rezept|title|name):? */i, '')
    .trim();

/** "For the sauce:", "Sauce", "## Topping" */
function isHeading(line: string, raw: string): boolean {
  if (/^#{1,6} /.test(raw) || /^(?:\*\*|__)[^*_]+(?:\*\*|__):?$/.test(raw)) return !beginsWithAmount(line);
  if (/^[-=_*~]{3,}$/.test(raw)) return true;
  if (/:$/.test(line)) return !beginsWithAmount(line) || line.split(' ').length < 4;
  if (
    /^(?:for|für) (?:the |die |den |das )?[\p{L} -]{3,30}$/iu.test(line) &&
    !/frying|serving|garnish|dusting|brushing|braten/i.test(line)
  )
    return true;
  return /^[\p{Lu} &'-]{4,40}$/u.test(line) && !beginsWithAmount(line) && matchFood(line)?.sure !== true;
}

function kindOf(raw: string, line: string): Kind {
  if (line === '') return 'blank';
  const title = titleOf(line);
  if (INGREDIENTS_HEADING.test(title)) return 'ingredients';
  if (METHOD_HEADING.test(title)) return 'method';
  if (NOTES_HEADING.test(title)) return 'method';
  if (servingsOf(line) !== undefined) return 'servings';
  if (FACT.test(title) || LINK.test(line) || DURATION.test(line)) return 'fact';
  if (isHeading(line, raw)) return 'heading';
  return isSentence(line) ? 'prose' : 'item';
}

/** "Soup | Serves 4 | Prep: 15 min", "Directions: stir", "2 cups flour, 1 tsp salt": several lines in one. */
function partsOfLine(raw: string): string[] {
  const bars = raw.split('|').map((part) => part.trim());
  if (bars.length > 1)
    return bars.some((part) => servingsOf(part) !== undefined || FACT.test(part))
      ? bars.filter((part) => part !== '')
      : partsOfLine(bars.join(' ').trim());
  const heading = /^([\p{L} ]{5,30}:) +(\S.*)$/u.exec(raw);
  if (heading && METHOD_HEADING.test(heading[1]!)) return [heading[1]!, heading[2]!];
  const parts = raw.split(/[,;] (?=(?:\d|[½¼¾⅓⅔]))/);
  const areAll =
    parts.length > 1 &&
    parts.slice(1).every((part) => {
      const { food, unsettled } = readLine(part);
      return food !== undefined && unsettled === undefined;
    });
  return areAll ? parts : [raw];
}

/** "… until soft. Serves 4." */
const SERVES_INSIDE =
  /[.!] ?(?:Serves|Makes|Für|Ergibt) (?:about |ca\. )?(\d{1,3})(?: (?:servings|portions|people|Portionen|Personen))?\.?$/;

/** A text of more lines than these is no recipe. */
const MOST_LINES = 1000;
const LONGEST_LINE = 2000;

/**
 * Reads a recipe as people write it: a title, servings, headings, ingredients one a line, then the method; or the ingredients alone. In
 * English and German. Nothing of the list is dropped: what is not understood is a line left to settle. Lines of the method are none.
 *
 * @param own foods of the user, by their names
 * @param servings where the text's are not wanted
 */
export function readRecipeText(text: string, own: readonly Food[] = [], servings?: number): RecipeText {
  const raws = text
    .replace(/\r\n?/g, '\n')
    .split('\n')
    .slice(0, MOST_LINES)
    .flatMap((raw) => partsOfLine(raw.trim().slice(0, LONGEST_LINE)));
  const read = raws.map((raw) => {
    const line = withoutBullet(plainLine(raw));
    return { raw, line, kind: kindOf(raw, line) };
  });
  const hasIngredients = read.some(({ kind }) => kind === 'ingredients');
  const first = read.findIndex(({ kind }) => kind !== 'blank');
  const titleAt = titleLine(read, first);
  let stated = titleAt === undefined ? undefined : servingsInTitle(titleOf(read[titleAt]!.line));
  for (const { line } of read) stated ??= servingsOf(line);
  for (const { line } of read) stated ??= Number(SERVES_INSIDE.exec(line)?.[1] ?? 0) || undefined;
  const count = servings ?? stated;

  const items: string[] = [];
  const method: string[] = [];
  let part: 'before' | 'list' | 'method' = hasIngredients ? 'before' : 'list';
  let listed = 0;
  read.forEach(({ raw, line, kind }, index) => {
    if (kind === 'blank' || index === titleAt || kind === 'servings' || kind === 'fact') return;
    if (kind === 'ingredients') {
      part = 'list';
      // "Ingredients: 2 eggs, 100 g flour" on one line
      const inline = /^[^:]{3,40}: *(\S.*)$/.exec(line)?.[1];
      if (inline && amountAt(inline, 0))
        inline.split(/[,;] (?=\d|[½¼¾]|an? )/).forEach((each) => items.push(each));
      return;
    }
    if (kind === 'method') {
      part = 'method';
      return;
    }
    if (part === 'before') return;
    if (part === 'method') {
      method.push(raw);
      return;
    }
    if (kind === 'heading') return;
    if (kind === 'prose') {
      // A sentence before the list introduces it; one behind it begins the method.
      if (listed > 0) {
        method.push(raw);
        if (!hasIngredients || isMethodFrom(read, index)) part = isMethodFrom(read, index) ? 'method' : part;
      }
      return;
    }
    listed += 1;
    items.push(withoutBullet(raw));
  });
  const name =
    titleAt === undefined
      ? undefined
      : titleOf(read[titleAt]!.line)
          .replace(IN_TITLE, '')
          .replace(/[ ,(-]{1,4}$/, '')
          .trim();
  return {
    ...(name && { name }),
    ...(stated !== undefined && { servings: stated }),
    lines: items.map((item) => readLine(item, own, count)),
    method,
  };
}

/** Whether no line with an amount follows: then the rest is how it is cooked. */
const isMethodFrom = (read: readonly { line: string; kind: Kind }[], from: number): boolean =>
  !read
    .slice(from + 1)
    .some(
      ({ line, kind }) =>
        kind === 'ingredients' || (kind === 'item' && beginsWithAmount(line) && line.split(' ').length < 12),
    );

/** The line that names the dish: the first one without an amount, where a list follows. */
function titleLine(
  read: readonly { raw: string; line: string; kind: Kind }[],
  first: number,
): number | undefined {
  const line = read[first];
  if (!line || beginsWithAmount(line.line)) return undefined;
  if (line.kind === 'ingredients' || line.kind === 'method' || line.kind === 'fact') return undefined;
  if (line.kind === 'prose' && /[.!]$/.test(line.line)) return undefined;
  if (line.kind === 'servings')
    return IN_TITLE.test(titleOf(line.line)) && !/^(?:serves|makes|feeds|for|für|yield)/i.test(line.line)
      ? first
      : undefined;
  if (/^[-*•] /.test(line.raw) || line.line.length > 90) return undefined;
  if (/^(?:for|für) the\b|:$/i.test(line.line) && !/^(?:recipe|rezept|title|name):/i.test(line.line))
    return undefined;
  const hasAmounts = read.some(
    ({ line: each, kind }, index) => index > first && kind === 'item' && /\d/.test(each),
  );
  return hasAmounts || read.some(({ kind }) => kind === 'ingredients') ? first : undefined;
}
