import { MASS_G, VOLUME_ML } from '../planning/units/convert.ts';

/** A stated number, with the ends of a range where one is stated. */
export type Amount = { readonly value: number; readonly low: number; readonly high: number };

/** What a word after a number measures: weight, volume, or things of a kind that has to be looked up. */
export type Unit =
  | { readonly kind: 'mass'; readonly g: number; readonly name: string }
  | {
      readonly kind: 'volume';
      readonly ml: number;
      readonly low?: number;
      readonly high?: number;
      readonly name: string;
    }
  | { readonly kind: 'count'; readonly name: CountName };

/** Things that are counted, as their English name; the weight of one depends on the food. */
export type CountName =
  | 'clove'
  | 'slice'
  | 'rasher'
  | 'stalk'
  | 'stick'
  | 'sprig'
  | 'leaf'
  | 'bunch'
  | 'handful'
  | 'head'
  | 'bulb'
  | 'ear'
  | 'tin'
  | 'jar'
  | 'packet'
  | 'sachet'
  | 'bottle'
  | 'carton'
  | 'tub'
  | 'cube'
  | 'piece'
  | 'fillet'
  | 'breast'
  | 'thigh'
  | 'drumstick'
  | 'ball'
  | 'block'
  | 'knob'
  | 'thumb'
  | 'inch'
  | 'cm'
  | 'link'
  | 'sheet'
  | 'strip'
  | 'wedge'
  | 'floret'
  | 'bag'
  | 'box'
  | 'chop'
  | 'steak'
  | 'nest'
  | 'bar'
  | 'scoop'
  | 'half';

const MASS: Readonly<Record<string, number>> = {
  ...Object.fromEntries('g gr gm gms gs gram grams gramme grammes gramm'.split(' ').map((word) => [word, 1])),
  ...Object.fromEntries(
    'kg kgs kilo kilos kilogram kilograms kilogramm'.split(' ').map((word) => [word, 1000]),
  ),
  mg: 0.001,
  dag: 10,
  ...Object.fromEntries('oz ozs ounce ounces'.split(' ').map((word) => [word, MASS_G.oz])),
  ...Object.fromEntries('lb lbs pound pounds'.split(' ').map((word) => [word, MASS_G.lb])),
  pfund: 500,
  zentner: 50_000,
};

/** Metric spoons of 15 and 5 ml, as sold in Europe; a German "Tasse" is no fixed measure, and a splash is a splash (common practice). */
const VOLUME: Readonly<Record<string, { ml: number; low?: number; high?: number }>> = {
  ml: { ml: 1 },
  mls: { ml: 1 },
  milliliter: { ml: 1 },
  millilitre: { ml: 1 },
  milliliters: { ml: 1 },
  millilitres: { ml: 1 },
  cc: { ml: 1 },
  cl: { ml: 10 },
  centilitre: { ml: 10 },
  dl: { ml: 100 },
  deciliter: { ml: 100 },
  decilitre: { ml: 100 },
  l: { ml: 1000 },
  ltr: { ml: 1000 },
  litre: { ml: 1000 },
  litres: { ml: 1000 },
  liter: { ml: 1000 },
  liters: { ml: 1000 },
  cup: { ml: VOLUME_ML.cup },
  cups: { ml: VOLUME_ML.cup },
  c: { ml: VOLUME_ML.cup },
  cupful: { ml: VOLUME_ML.cup },
  mug: { ml: 300, low: 230, high: 350 },
  mugs: { ml: 300, low: 230, high: 350 },
  tablespoon: { ml: VOLUME_ML.tbsp },
  tablespoons: { ml: VOLUME_ML.tbsp },
  tbsp: { ml: VOLUME_ML.tbsp },
  tbsps: { ml: VOLUME_ML.tbsp },
  tbs: { ml: VOLUME_ML.tbsp },
  tblsp: { ml: VOLUME_ML.tbsp },
  tb: { ml: VOLUME_ML.tbsp },
  tbl: { ml: VOLUME_ML.tbsp },
  teaspoon: { ml: VOLUME_ML.tsp },
  teaspoons: { ml: VOLUME_ML.tsp },
  tsp: { ml: VOLUME_ML.tsp },
  tsps: { ml: VOLUME_ML.tsp },
  dessertspoon: { ml: 10 },
  dessertspoons: { ml: 10 },
  dsp: { ml: 10 },
  floz: { ml: VOLUME_ML['fl oz'] },
  pint: { ml: VOLUME_ML.qt / 2, high: 568 },
  pints: { ml: VOLUME_ML.qt / 2, high: 568 },
  pt: { ml: VOLUME_ML.qt / 2, high: 568 },
  quart: { ml: VOLUME_ML.qt },
  quarts: { ml: VOLUME_ML.qt },
  qt: { ml: VOLUME_ML.qt },
  qts: { ml: VOLUME_ML.qt },
  gallon: { ml: VOLUME_ML.qt * 4 },
  gallons: { ml: VOLUME_ML.qt * 4 },
  gal: { ml: VOLUME_ML.qt * 4 },
  el: { ml: 15 },
  essl: { ml: 15 },
  essloffel: { ml: 15 },
  esslöffel: { ml: 15 },
  eßlöffel: { ml: 15 },
  tl: { ml: 5 },
  teel: { ml: 5 },
  teelöffel: { ml: 5 },
  teeloffel: { ml: 5 },
  kl: { ml: 5 },
  tasse: { ml: 200, low: 125, high: 250 },
  tassen: { ml: 200, low: 125, high: 250 },
  pinch: { ml: 0.3, low: 0.15, high: 0.6 },
  pinches: { ml: 0.3, low: 0.15, high: 0.6 },
  prise: { ml: 0.3, low: 0.15, high: 0.6 },
  prisen: { ml: 0.3, low: 0.15, high: 0.6 },
  dash: { ml: 0.6, low: 0.3, high: 5 },
  dashes: { ml: 0.6, low: 0.3, high: 5 },
  messerspitze: { ml: 0.5, low: 0.25, high: 1 },
  msp: { ml: 0.5, low: 0.25, high: 1 },
  splash: { ml: 5, low: 2, high: 15 },
  squeeze: { ml: 5, low: 2, high: 15 },
  drizzle: { ml: 10, low: 5, high: 15 },
  glug: { ml: 15, low: 10, high: 30 },
  schuss: { ml: 15, low: 5, high: 30 },
  spritzer: { ml: 3, low: 1, high: 10 },
  tropfen: { ml: 0.05 },
  drop: { ml: 0.05 },
  drops: { ml: 0.05 },
  sprinkle: { ml: 0.6, low: 0.3, high: 2 },
  sprinkling: { ml: 0.6, low: 0.3, high: 2 },
  grind: { ml: 0.3, low: 0.1, high: 1 },
};

const COUNT_WORDS: Readonly<Record<CountName, string>> = {
  clove: 'clove cloves zehe zehen knoblauchzehe',
  slice: 'slice slices scheibe scheiben round rounds',
  rasher: 'rasher rashers',
  stalk: 'stalk stalks rib ribs stange stangen',
  stick: 'stick sticks',
  sprig: 'sprig sprigs zweig zweige stängel stängeln stiel stiele stem stems',
  leaf: 'leaf leaves blatt blätter',
  bunch: 'bunch bunches bund',
  handful: 'handful handfuls handvoll fistful',
  head: 'head heads kopf köpfe',
  bulb: 'bulb bulbs knolle knollen',
  ear: 'ear ears cob cobs kolben',
  tin: 'tin tins can cans dose dosen',
  jar: 'jar jars glas gläser',
  packet: 'packet packets pack packs package packages pkg pkgs packung packungen päckchen pck pkt pck',
  sachet: 'sachet sachets envelope envelopes tüte tüten beutel',
  bottle: 'bottle bottles flasche flaschen',
  carton: 'carton cartons',
  tub: 'tub tubs becher container containers pot pots',
  cube: 'cube cubes würfel',
  piece: 'piece pieces pc pcs stück stücke stk st',
  fillet: 'fillet fillets filet filets',
  breast: 'breast breasts',
  thigh: 'thigh thighs',
  drumstick: 'drumstick drumsticks',
  ball: 'ball balls kugel kugeln',
  block: 'block blocks',
  knob: 'knob knobs stich',
  thumb: 'thumb thumbs',
  inch: 'inch inches',
  cm: 'cm',
  link: 'link links',
  sheet: 'sheet sheets',
  strip: 'strip strips streifen',
  wedge: 'wedge wedges',
  floret: 'floret florets röschen',
  bag: 'bag bags',
  box: 'box boxes',
  chop: 'chop chops',
  steak: 'steak steaks',
  nest: 'nest nests',
  bar: 'bar bars tafel tafeln riegel',
  scoop: 'scoop scoops',
  half: 'halves',
};
const COUNTS = new Map<string, CountName>(
  Object.entries(COUNT_WORDS).flatMap(([name, words]) =>
    words.split(' ').map((word) => [word, name as CountName] as const),
  ),
);

/** @returns the unit that a word is, without its full stop; `undefined` where it is none. "T" is a tablespoon, "t" a teaspoon. */
export function unitOf(written: string): Unit | undefined {
  const word = written.replace(/\.$/, '');
  if (word === 'T') return { kind: 'volume', ml: VOLUME_ML.tbsp, name: 'tbsp' };
  if (word === 't') return { kind: 'volume', ml: VOLUME_ML.tsp, name: 'tsp' };
  const low = word.toLowerCase();
  const mass = MASS[low];
  if (mass !== undefined) return { kind: 'mass', g: mass, name: low };
  const volume = VOLUME[low];
  if (volume) return { kind: 'volume', ...volume, name: low };
  const count = COUNTS.get(low);
  return count && { kind: 'count', name: count };
}

const NUMBER_WORDS: Readonly<Record<string, number>> = {
  a: 1,
  an: 1,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  dozen: 12,
  half: 0.5,
  quarter: 0.25,
  ein: 1,
  eine: 1,
  einen: 1,
  einer: 1,
  eines: 1,
  zwei: 2,
  drei: 3,
  vier: 4,
  fünf: 5,
  sechs: 6,
  sieben: 7,
  acht: 8,
  neun: 9,
  zehn: 10,
  zwölf: 12,
  halbe: 0.5,
  halber: 0.5,
  halbes: 0.5,
  halben: 0.5,
  anderthalb: 1.5,
  dutzend: 12,
};
/** As many as these words mean is anybody's guess (common practice). */
const VAGUE_WORDS: Readonly<Record<string, Amount>> = {
  couple: { value: 2, low: 2, high: 3 },
  few: { value: 3, low: 2, high: 5 },
  some: { value: 1, low: 0.5, high: 2 },
  several: { value: 4, low: 3, high: 6 },
  einige: { value: 3, low: 2, high: 5 },
  etwas: { value: 1, low: 0.5, high: 2 },
  ein_paar: { value: 3, low: 2, high: 5 },
};

const FRACTIONS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** @returns a line with plain fractions, dashes, signs and blanks: "1½–2 Tbsp." as "1 1/2-2 Tbsp." */
export function plainLine(text: string): string {
  return text
    .replace(/\p{Cc}+/gu, ' ')
    .replace(/(\d)?([½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞])/g, (_, whole: string | undefined, sign: string) =>
      whole === undefined ? FRACTIONS[sign]! : `${whole} ${FRACTIONS[sign]!}`,
    )
    .replaceAll('⁄', '/')
    .replace(/[‐‑‒–—−]/g, '-')
    .replace(/[×✕]/g, 'x')
    .replace(/[“”„″]/g, '"')
    .replace(/[’‘`´]/g, "'")
    .replace(/[\s\u00A0\u2000-\u200B\u202F]+/g, ' ')
    .trim();
}

const exactly = (value: number): Amount => ({ value, low: value, high: value });

/** "1 1/2", "3/4", "2.5", "1,5", "1,000" from a place of the text on. */
function numberAt(text: string, from: number): { value: number; to: number } | undefined {
  const at = (pattern: RegExp): RegExpExecArray | null => {
    pattern.lastIndex = from;
    return pattern.exec(text);
  };
  const mixed =
    at(/(\d{1,4}) (?:and |und |& )?(\d{1,2}) ?\/ ?(\d{1,2})/y) ?? at(/(\d{1,4})[ -](\d) ?\/ ?(\d{1,2})/y);
  if (mixed && Number(mixed[3]) > 0)
    return { value: Number(mixed[1]) + Number(mixed[2]) / Number(mixed[3]), to: from + mixed[0].length };
  const fraction = at(/(\d{1,2}) ?\/ ?(\d{1,2})(?!\d)/y);
  if (fraction && Number(fraction[2]) > 0)
    return { value: Number(fraction[1]) / Number(fraction[2]), to: from + fraction[0].length };
  const thousands = at(/\d{1,3}[.,]\d{3}(?!\d)/y);
  if (thousands && !thousands[0].startsWith('0'))
    return { value: Number(thousands[0].replace(/[.,]/, '')), to: from + thousands[0].length };
  const plain = at(/\d{1,6}(?:[.,]\d{1,3})?/y);
  return plain ? { value: Number(plain[0].replace(',', '.')), to: from + plain[0].length } : undefined;
}

/** Between the two ends of a range. */
const TO = / ?(?:-|to\b|bis\b|or\b|oder\b|~) ?/y;
const ABOUT =
  /(?:about|approximately|approx\.?|around|roughly|circa|ca\.?|etwa|ungefähr|rund|scant|knapp|gut|generous|heaping|up to|bis zu|~) ?/iy;

/**
 * Reads the amount that stands at a place of a line: a number, a fraction, a range, or a word for one.
 *
 * @returns the amount and where it ends; `undefined` where there is none
 */
export function amountAt(text: string, start: number): { amount: Amount; to: number } | undefined {
  ABOUT.lastIndex = start;
  const from = start + (ABOUT.exec(text)?.[0].length ?? 0);
  const first = numberAt(text, from);
  if (first) {
    TO.lastIndex = first.to;
    const to = TO.exec(text);
    const second = to && numberAt(text, first.to + to[0].length);
    if (second && second.value > first.value)
      return {
        amount: { value: (first.value + second.value) / 2, low: first.value, high: second.value },
        to: second.to,
      };
    return { amount: exactly(first.value), to: first.to };
  }
  const word = /[\p{L}]+/uy;
  word.lastIndex = from;
  const found = word.exec(text)?.[0].toLowerCase();
  if (found === undefined) return undefined;
  const after = from + found.length;
  const next =
    / (?:a |an |of a )?(half|quarter|couple|few|dozen|halben|halbes|halber|halbe|paar)(?: of| a| an)?\b/iy;
  next.lastIndex = after;
  const second = next.exec(text);
  if (
    second &&
    (found === 'a' || found === 'an' || found.startsWith('ein') || found === 'half' || found === 'one')
  ) {
    const name = second[1]!.toLowerCase();
    const vague = VAGUE_WORDS[name === 'paar' ? 'ein_paar' : name];
    const factor = NUMBER_WORDS[name] ?? 1;
    return {
      amount: vague ?? exactly(found === 'half' ? 0.5 * factor : factor),
      to: after + second[0].length,
    };
  }
  const vague = VAGUE_WORDS[found];
  if (vague) return { amount: vague, to: after };
  const value = NUMBER_WORDS[found];
  if (value === undefined) return undefined;
  const of = / (?:of )?(?:a|an|one)\b/iy;
  of.lastIndex = after;
  return {
    amount: exactly(value),
    to: after + (found === 'half' || found === 'quarter' ? (of.exec(text)?.[0].length ?? 0) : 0),
  };
}
