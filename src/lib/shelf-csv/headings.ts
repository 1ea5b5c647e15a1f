import { ALLERGENS } from '../planning/model/allergens.ts';
import { closest } from './closest.ts';
import { currencyIn } from './currency-words.ts';
import { fieldEntry, plainWords, type ColumnUnit, type ShelfField } from './fields.ts';
import { UNIT_LIST, unitCalled } from './unit-words.ts';
import { ALLERGEN_VOCABULARY, DIET_VOCABULARY } from './vocabulary.ts';

/** For what the value of a column is stated: `lot` is all pouches of a row together. */
export const BASES = ['serving', 'pouch', '100g', 'lot'] as const;
export type Basis = (typeof BASES)[number];

/** What a heading may mean; `sure` is how plainly it says so, 0 to 1. */
export type Meaning = {
  readonly field: ShelfField;
  readonly sure: number;
  readonly unit?: ColumnUnit | undefined;
  readonly per?: Basis | undefined;
  /** The allergen or the diet of a column of yes and no. */
  readonly of?: string | undefined;
};

/** Names of what a column holds, in English, German and French, compared by `plainWords`. A name may stand under several. */
const NAMES: Readonly<Partial<Record<ShelfField, string>>> = {
  code: `code, lot, lot code, lot no, lot number, batch, batch code, batch no, batch number, id, no, nr, number, label, pouch code, bag code, bag no, bag nr, bag id, pouch no, pouch id, tag, ref,
    nummer, charge, chargennummer, chargen nr, los, etikett, kennung, kurzel, beutel nr, beutelnummer, tuten nr, numero, lfd nr, laufende nummer, pos, position, item, item no, sku, row, line`,
  recipe: `recipe, recipe name, name, meal name, name of meal, dish, dish name, title, food, food item, product, what, what it is, item, meal, contents, content, description, stuff, menu, entree,
    rezept, rezeptname, gericht, gerichte, speise, essen, mahlzeit, repas, bezeichnung, was, inhalt, produkt, artikel, sorte, lebensmittel, menu, name des gerichts, recette, plat, nom`,
  mealKinds: `meals, meal, meal kind, meal kinds, meal type, meal time, kind, type, category, cat, course, for, slot, when, when to eat, eat for, time of day, eaten for, good for, use for,
    mahlzeit, mahlzeiten, mahlzeitentyp, art, typ, kategorie, wann, fur, gang, tageszeit, gedacht fur, repas, type de repas`,
  sealedOn: `sealed, sealed on, sealing date, date sealed, packed, packed on, pack date, packing date, date packed, bagged, bagged on, date bagged, vac sealed, vacuum sealed, made, made on, date made,
    dried, dried on, date dried, freeze dried on, dehydrated on, production date, produced, prepared, date, when made, done, done on, cooked, cooked on, fd date, run date, batch date,
    versiegelt, versiegelt am, eingeschweisst, eingeschweisst am, verpackt, verpackt am, abgepackt, abgepackt am, abgefullt, abgefullt am, vakuumiert, vakuumiert am, hergestellt, hergestellt am, herstellung,
    herstelldatum, herstellungsdatum, gemacht am, gekocht am, getrocknet, getrocknet am, datum, gemacht, scelle, scelle le, emballe le, date de scellage`,
  bestBefore: `best before, best before date, best before end, bb, bbd, bbe, bb date, best by, best by date, best if used by, use by, use by date, use before, eat by, eat before, good until, good till, good to, good thru,
    good through, keeps until, keep until, keeps till, lasts until, lasts till, expires, expires on, expiry, expiry date, exp, exp date, expiration, expiration date, discard after, finish by, eat me by, until,
    mhd, haltbar bis, haltbar, mindestens haltbar bis, mindesthaltbarkeit, mindesthaltbarkeitsdatum, haltbarkeit bis, haltbarkeit, haltbarkeitsdatum, verbrauchen bis, zu verbrauchen bis, essen bis, bis, gut bis, ablaufdatum, ablauf,
    verfallsdatum, aufbrauchen bis, ddm, a consommer avant, a consommer avant le, date limite`,
  keepsMonths: `shelf life, keeps, keeps for, keeping time, lasts, lasts for, good for, storage life, life, haltbarkeit, haltbar, haltbarkeitsdauer, halt, lagerdauer`,
  pouches: `pouches, pouch count, number of pouches, no of pouches, nr of pouches, count, quantity, qty, qty left, quan, amount, amt, stock, in stock, on hand, no on hand, nr on hand, no in stock, no left, no of bags left, have, we have, left, remaining, bags left, pouches left, packs left, now, still there, inventory,
    how many, how many bags, how many left, packs, packets, bags, number of bags, no of bags, nr of bags, number, no, nr, sachets, portions packed, pieces, pcs, units, made, packed, total bags, bag count, baggies, mylar bags, meals,
    anzahl, anz, menge, stuck, stk, stuckzahl, bestand, vorrat, vorratig, noch da, noch vorhanden, vorhanden, rest, ubrig, beutel, anzahl beutel, beutelzahl, anz beutel, tuten, packungen, packchen, pack, pkt, pck, zahl, wieviele, wie viele, stuck vorratig,
    beutel vorratig, beutel ubrig, im regal, auf lager, lagerbestand, quantite, nombre, nombre de sachets`,
  servingsPerPouch: `servings, serves, serving, servings per pouch, servings per bag, servings per pack, servings bag, servings pouch, servings in bag, servings in a bag, serv, servs, srv, srvs, svgs, portions, portions per pouch, portions per bag, portions bag, portions each, servings each, size,
    people, persons, total servings, servings total, total portions, for how many, feeds, feeds how many, no of servings, number of servings, ppl, pax, heads, for, serving count, bag size, pouch size, portion size, serving size,
    portionen, portionen gesamt, gesamtportionen, portionen insgesamt, portionen pro beutel, portionen je beutel, portionen beutel, port, ports, portion, anzahl portionen, portionsgrosse, personen, pers, fur personen, fur wieviele, reicht fur, fur, esser, portionen je tute, portions par sachet, parts`,
  dryWeightG: `dry weight, weight, weight dry, net weight, weight net, net, mass, dry mass, dry, dry wt, wt, wt dry, net wt, dried weight, weight dried, food weight, weight of food, weigh, weighs, contents weigh, contents weight, fill weight, fill, dry fill, finished weight, end weight, weight after drying, after drying,
    serving size, portion size, serving weight, portion weight, bag weight, pouch weight, pack weight, weight of bag, weight of pouch, weight of serving, weight of portion, pouch size, bag size, pack size, packet size, packungsgrosse, beutelgrosse, bag, pouch, serving, portion, size, amount, amt, grams, grammes, ounces, quantity,
    trockengewicht, gewicht, gewicht trocken, nettogewicht, netto, gewicht netto, fullgewicht, fullmenge, einwaage, trocken, trockenmasse, masse, menge, gramm, beutelgewicht, portionsgewicht, portionsgrosse, portion, beutel, inhalt, endgewicht, gew, gewicht des inhalts, poids, poids sec, poids net`,
  grossWeightG: `gross weight, gross, weight gross, weight incl bag, weight including bag, weight with bag, weight with pouch, weight incl pouch, weight in bag, weight with packaging, packed weight, sealed weight, filled weight, filled pouch weight, filled bag weight, weight sealed, carry weight, trail weight,
    weight incl packaging, weight including packaging, weight including pouch, incl bag, with bag, wt incl bag, wt with bag, wt w bag, weight w bag, bruttogewicht, brutto, gewicht brutto, gewicht mit beutel, gewicht mit tute, gewicht inkl beutel, gewicht inkl verpackung, gewicht mit verpackung, mit beutel, mit verpackung, inkl beutel, packgewicht, poids brut`,
  energyKcal: `energy, energy content, calories, cals, cal, kcals, kcal, calorie, calory, calorific value, calorie count, food energy, kj, kilojoule, kilojoules, kj kcal, kcal kj, energie, brennwert, energiegehalt, kalorien, kilokalorien, nahrwert, valeur energetique`,
  proteinG: `protein, proteins, prot, p, pro, eiweiss, eiweisse, ew, e, proteine, proteines`,
  fatG: `fat, fats, total fat, f, fett, fette, lipides, matieres grasses`,
  carbohydrateG: `carbohydrate, carbohydrates, carb, carbs, cho, c, total carbohydrate, total carbs, net carbs, kohlenhydrate, kh, kohlehydrate, k, glucides`,
  fibreG: `fibre, fiber, dietary fibre, dietary fiber, ballaststoffe, ballast, fibres`,
  sugarsG: `sugar, sugars, of which sugars, total sugars, zucker, davon zucker, sucres`,
  sodiumMg: `sodium, na, natrium`,
  saltG: `salt, salz, sel`,
  waterMl: `water, water to add, add water, water added, added water, water amount, amount of water, rehydration water, water needed, water required, water per bag, water to rehydrate, h2o, h20, liquid, add, rehydrate, rehydrate with, to rehydrate, water in, rehydration, hot water, boiling water, cold water,
    wasser, wassermenge, wasser zugeben, wasserzugabe, wasser dazu, wasserbedarf, zugabe wasser, heisses wasser, kochendes wasser, kaltes wasser, wasser zum aufgiessen, aufguss, mit wasser, flussigkeit, eau, eau a ajouter, quantite d eau`,
  waterKind: `water kind, kind of water, water type, type of water, water temperature, water temp, temp, temperature, hot or cold, hot cold, cold or hot, cold hot, how hot, boil cold, cold boil, boil or cold, hot water, boiling water, wasserart, wassertemperatur, wasser temp, heiss kalt, heiss oder kalt, kalt heiss, temperatur, type d eau, temperature de l eau`,
  steepMin: `steep, steep time, steeping time, soak, soak time, soaking time, rehydration time, rehydration, rehydrate time, rehydrate, rehydrates in, time to rehydrate, wait, waiting time, wait time, stand, stand time, standing time, time, ready in, min, mins, minutes, cook time, cooking time, sit, sit time, rehyd time, rehy,
    ziehzeit, ziehen, ziehen lassen, einweichzeit, wartezeit, warten, quellzeit, quellen, zeit, dauer, minuten, zubereitungszeit, garzeit, temps de trempage, temps d attente, trempage`,
  stirAfterMin: `stir after, stir, stir time, stir at, umruhren nach, umruhren, remuer apres, remuer`,
  tareG: `packaging, packaging weight, packaging tare, tare, tare weight, empty pouch, empty pouch weight, empty bag, empty bag weight, bag only, bag empty, pouch empty, wrapper, packaging wt,
    verpackung, verpackungsgewicht, leergewicht, tara, beutel leer, leerer beutel, emballage, poids de l emballage, leer, only the bag, without food, ohne inhalt, taragewicht, packmittel, beutel allein, tute leer, tute allein, folie, pouch empty weight, bag empty weight, weight of empty bag, weight of empty pouch, gewicht leer, gewicht beutel leer, leergewicht beutel, pouch weight, bag weight, weight of bag, weight of pouch, beutelgewicht, tutengewicht`,
  volumeMl: `volume, pack volume, packed volume, pouch volume, bag volume, packed size, volumen, packvolumen, packmass, vol`,
  allergens: `allergens, allergen, allergy, allergies, contains, contains allergens, allergy advice, allergy info, allergen info, allergene, allergenhinweis, allergieinfo, allergenes, enthalt, enthaltene allergene, contient`,
  diets: `diets, diet, diet notes, dietary, dietary notes, dietary info, suitable for, diet type, veg, vegetarian or meat, meat veg, meat or veg, ernahrung, ernahrungsform, ernahrungsweise, diat, kostform, kost, fleisch vegi, regime, regimes`,
  costMinor: `cost, costs, price, preis, kosten, prix, cout`,
  currency: `currency, wahrung, devise, monnaie`,
  place: `place, location, where, stored, stored in, storage, stored at, box, bin, shelf, crate, tote, cupboard, freezer, drawer, container, kept in, kept, position, lagerort, ort, wo, kiste, regal, fach, schrank, lagerplatz, lager, ablageort, aufbewahrung, liegt in, standort, platz, box nr, kisten nr`,
  note: `note, notes, bem, anm, comment, comments, remark, remarks, other, misc, info, other info, extra info, instructions, prep, preparation, method, directions, tips, tip, thoughts, remember, notiz, notizen, bemerkung, bemerkungen, anmerkung, anmerkungen, kommentar, hinweis, hinweise, sonstiges, zubereitung, remarque, remarques, commentaire`,
  pieces: `pieces per bag, pieces per pouch, pieces in bag, pieces in a pouch, pieces, bars, stuck pro beutel, stuck je beutel`,
  kind: `kind of dish, dish type, main or side, plate`,
  pouchTakesBoilingWater: `boiling water in pouch, boil in bag, boil safe, takes boiling water, boiling water ok, heat proof, hitzefest, kochfest, kochwasserfest`,
  eatFromPouch: `eat from pouch, eat from bag, eaten from bag, aus dem beutel essbar`,
  pouchStands: `pouch stands, stands, stand up, stand up pouch, standbeutel, standbodenbeutel`,
  weighedDry: `weighed dry, dryness weighed, dryness measured, trocken gewogen`,
  cookAfter: `cook after, cook after rehydrating, needs cooking`,
};

/** Words that say that the column is about something else than what lies on the shelf now. */
const NOT_THAT =
  /(?:^| )(?:wet|raw|fresh|before|vorher|frisch\w*|roh\w*|nass\w*|nassgewicht|feucht\w*|cooked weight|rehydrated|lost|loss|removed|evaporated|verlust|entzogen|eaten|used|gone|given|gegessen|verbraucht|entnommen|verschenkt|planned|geplant|target|goal|soll|wanted|per day|pro tag|leftover|rating|note 1|stars|sterne|bewertung|score|ratio|free|frei|ingredients?|zutaten)(?: |$)/;

/** "Serving weight" and "Portionsgewicht" say for what they are. */
const BASIS_AHEAD: readonly (readonly [Basis, RegExp])[] = [
  [
    'serving',
    /^(?:servings?|serv|portions?|portionen|ports?|person) (?=wt|weight|size|g$|oz$|gewicht|kcal|cals?|calories|energy|energie|water|wasser)/,
  ],
  [
    'pouch',
    /^(?:bag|pouch|pack|packet|beutel|tuten?) (?=kcal|cals?|calories|energy|energie|water|wasser|cost|price)/,
  ],
];
const COMPOUND: readonly (readonly [Basis, RegExp])[] = [
  ['serving', /^portions(?=gewicht|grosse|wasser)/],
  ['pouch', /^beutel(?=wasser)/],
];

/** Weights and figures of all pouches of a row; one pouch is not told from them. "Total fat" is the fat of a label. */
const ALL_TOGETHER =
  /^(?:(?:grand )?total|overall|gesamt|sum|all) (?:weight|wt|g|kg|oz|lbs?|kcal|cals?|calories|energy|energie|gewicht|kalorien|water|wasser|cost|price|value)|^gesamt(?:gewicht|kalorien|energie|kosten)|(?:weight|kcal|calories|gewicht) (?:total|gesamt)$/;

const BASIS_WORDS: readonly (readonly [Basis, RegExp])[] = [
  ['100g', /(?:^| )(?:(?:per|pro|je|par|in|a|auf) )?100 ?(?:g|gr|gramm?s?|grammes)(?= |$)/],
  [
    'serving',
    /(?:^| )(?:per|each|a|one|je|pro|par|p|for one|1|of a|of one|einer?) (?:servings?|serve|servs?|srv|svg|portion(?:en)?|port|person|persons?|pers|personne|head|kopf|pax|p|nase|meal|mahlzeit|esser)(?= |$)/,
  ],
  [
    'pouch',
    /(?:^| )(?:per|each|a|an|one|je|pro|par|in|in a|of|of a|of each|each|the|im|im ganzen|ganzer?|whole|full|entire|1) (?:pouch|bag|baggie|packet|package|pack|sachet|beutel|tute|packung|pckg|pkg|pkt|btl|packchen|unit)(?= |$)/,
  ],
  [
    'lot',
    /(?:^| )(?:per lot|whole lot|whole batch|per batch|all bags|all pouches|all together|alle beutel|insgesamt|in total|total of all|gesamtmenge)(?= |$)/,
  ],
];
/** At the end alone, without a word such as "per": "kcal serving". */
const BASIS_AT_END: readonly (readonly [Basis, RegExp])[] = [
  ['serving', /(?:^| )(?:servings?|serve|srv|svg|portion|port|person|pers|pp|head)$/],
  ['pouch', /(?:^| )(?:pouch|bag|baggie|packet|package|pack|sachet|beutel|tute|packung|pkg|pkt|btl)$/],
  ['pouch', /(?:^| )each$/],
];
const COUNTED_IN_ONE =
  /(?:servings?|servs?|srvs?|svgs?|portions?|portionen|ports?|pieces|pcs|stuck|people|personen|pers|ppl) (?:per|pro|je|in|each|a|par)(?: |$)/;
const FILLERS =
  /(?:^| )(?:approx|approximate|approximately|about|roughly|est|estimated|estimate|circa|ca|etwa|ungefahr|geschatzt|in|of|the|my|our|unser|unsere|der|die|das|des|is|it|has|to|und|and|on|info|value|values|werte?|nutrition|nutritional|nahrwerte|per|pro|je|a)(?= |$)/g;

/** @returns whether a heading says that its column is about something else than what lies on the shelf now. */
export const isAboutElse = (heading: string): boolean =>
  ALL_TOGETHER.test(plainWords(withSigns(heading))) ||
  NOT_THAT.test(
    ` ${plainWords(withSigns(heading)).replace(/(?:best|use|eat|avant|if) (?:before|used)|a consommer avant/g, '')} `,
  );

type Known = { readonly field: ShelfField; readonly rank: number };
const BY_NAME = new Map<string, Known[]>();
for (const [field, names] of Object.entries(NAMES))
  for (const [rank, name] of names.split(',').entries()) {
    const words = plainWords(name);
    if (words === '') continue;
    const known = BY_NAME.get(words) ?? [];
    if (!known.some((entry) => entry.field === field)) known.push({ field: field as ShelfField, rank });
    BY_NAME.set(words, known);
  }
const LONGEST_NAME = Math.max(...[...BY_NAME.keys()].map((name) => name.split(' ').length));

/** Whether any word of a row says that it is a heading. */
export const isHeadingWord = (words: string): boolean => BY_NAME.has(words);

export type HeadingParts = {
  readonly words: string;
  readonly unit?: ColumnUnit | undefined;
  readonly per?: Basis | undefined;
  /** Weighed together with the packaging. */
  readonly gross: boolean;
};

/** Takes unit, basis and currency off a heading: "energy, kJ per bag" is "energy", kJ, pouch. */
export function headingParts(heading: string): HeadingParts {
  let words = plainWords(withSigns(heading.replace(currencyIn(heading) ?? '', '')));
  let per: Basis | undefined;
  for (const [basis, pattern] of BASIS_WORDS) {
    if (!pattern.test(words)) continue;
    // Servings in one bag are counted, not stated for one.
    if (basis === 'pouch' && COUNTED_IN_ONE.test(words)) break;
    per = basis;
    words = words.replace(pattern, ' ').replace(/ +/g, ' ').trim();
    break;
  }
  for (const [basis, pattern] of [...BASIS_AHEAD, ...COMPOUND]) {
    if (per || !pattern.test(words)) continue;
    per = basis;
    words = words.replace(pattern, '').trim();
  }
  let unit: ColumnUnit | undefined;
  for (;;) {
    const last = /(?:^| )(fl oz|fluid ounces?|\S+)$/.exec(words);
    const lastUnit = last ? unitCalled(last[1]!, UNIT_LIST) : undefined;
    if (
      last &&
      lastUnit &&
      !unit &&
      (last.index > 0 || lastUnit === 'kcal' || lastUnit === 'kJ' || !BY_NAME.has(words))
    ) {
      unit = lastUnit;
      words = words.slice(0, last.index).replace(/ in$/, '').trim();
      continue;
    }
    const end =
      per || COUNTED_IN_ONE.test(words) ? undefined : BASIS_AT_END.find(([, pattern]) => pattern.test(words));
    if (end && words.replace(end[1], '') !== '' && !BY_NAME.has(words)) {
      per = end[0];
      words = words.replace(end[1], '').trim();
      continue;
    }
    break;
  }
  if (!unit) {
    const inside = words.split(' ').findIndex((word, index) => index > 0 && isPlainUnit(word));
    const first = words.split(' ')[0] ?? '';
    if (inside > 0) unit = unitCalled(words.split(' ')[inside]!, UNIT_LIST);
    else if (isPlainUnit(first) && words !== first) unit = unitCalled(first, UNIT_LIST);
  }
  const gross =
    /(?:^| )(?:gross|brutto|(?:incl|including|inkl|inklusive|with|mit|w) (?:the )?(?:bag|pouch|packaging|beutel|tute|verpackung|absorber))(?: |$)/.test(
      words,
    );
  return { words, unit, per, gross };
}

const isPlainUnit = (word: string): boolean =>
  /^(?:g|kg|oz|lb|lbs|kcal|kj|ml|cl|dl|mg|cups?|min|mins|grams?|gramm)$/.test(word);

/** Signs that are words to a reader: "#" is a number, "%" no unit that is known here. */
const withSigns = (heading: string): string =>
  heading
    // How a date is written is no name.
    .replace(/\((?:[dmyjt]{1,4}[./\- ]?){1,3}\)/gi, ' ')
    .replace(/gew\.?(?=$|[^\p{L}])/giu, 'gewicht ')
    .replace(/(?<!\p{L})(?:servs?|srvs?|svgs?)(?!\p{L})\.?/giu, 'servings')
    .replace(/#/g, ' no ')
    .replace(/(\p{L})\/(?=\p{L})/gu, '$1 per ')
    .replace(/\/ ?(?=100)/g, ' per ')
    .replace(/\)\s*\/|\/\s*(?=\p{L})/gu, ' per ')
    .replace(/&/g, ' and ');

/**
 * What a heading may mean, the likeliest first. The content of the column decides between them.
 *
 * @example headingMeanings('Brennwert kJ/Beutel')[0] // { field: 'energyKcal', unit: 'kJ', per: 'pouch', sure: 1 }
 */
export function headingMeanings(heading: string): readonly Meaning[] {
  const whole = plainWords(withSigns(heading.replace(currencyIn(heading) ?? '', '')));
  const meanings: Meaning[] = [];
  const add = (meaning: Meaning): void => {
    if (!meanings.some(({ field, of }) => field === meaning.field && of === meaning.of))
      meanings.push(meaning);
  };
  if (whole === '') return meanings;
  const { words, unit, per, gross } = headingParts(heading);
  const isOther = isAboutElse(heading);
  markMeanings(whole).forEach(add);
  if (isOther) return meanings;

  // A bag that is weighed with something in it.
  const isBag =
    /(?:^| )(?:(?:bag|pouch|pack|packet|packung) (?:weight|wt|size)|(?:weight|wt) of (?:the )?(?:bag|pouch|pack)|beutelgewicht|tutengewicht|packungsgewicht)(?: |$)|^(?:contents?|inhalt|fill|filling|fill weight|fullmenge|fullgewicht|einwaage)$/.test(
      whole,
    );
  const named = (text: string, sure: number): boolean => {
    const known = BY_NAME.get(text);
    if (!known) return false;
    [...known]
      .sort((one, other) => one.rank - other.rank)
      .forEach(({ field }, index) =>
        add({
          field,
          sure: sure - 0.02 * index,
          unit,
          per:
            field === 'servingsPerPouch' && /(?:^| )(?:total|gesamt\w*|insgesamt|all)(?: |$)/.test(whole)
              ? 'lot'
              : (per ?? (isBag && field === 'dryWeightG' ? 'pouch' : undefined)),
        }),
      );
    return true;
  };
  if (gross) add({ field: 'grossWeightG', sure: 1, unit, per: per ?? 'pouch' });
  const bare = words.replace(FILLERS, ' ').replace(/ +/g, ' ').trim();
  const isNamed = [named(whole, 1), named(words, 1), bare !== words && named(bare, 0.97)].some(Boolean);
  if (unit === 'kcal' || unit === 'kJ') add({ field: 'energyKcal', sure: 0.95, unit, per });
  if (words === '' || bare === '') {
    if (unit === 'min' || unit === 'h') add({ field: 'steepMin', sure: 0.8, unit });
    if (unit && ['g', 'kg', 'oz', 'lb'].includes(unit)) add({ field: 'dryWeightG', sure: 0.85, unit, per });
    if (unit && ['ml', 'cl', 'dl', 'l', 'cup', 'fl oz', 'qt'].includes(unit))
      add({ field: 'waterMl', sure: 0.6, unit, per });
    if (per === 'serving' || per === 'pouch') add({ field: 'dryWeightG', sure: 0.6, unit, per });
  }
  if (!isNamed) partMeanings(bare, unit, per).forEach(add);
  if (meanings.length === 0 && words.length >= 5) named(closest(words, BY_NAME.keys(), 1) ?? '', 0.8);
  return measuredIn(unit, meanings);
}

/** What goes with the unit of the heading: millilitres are no time, and what is in grams is no name. */
function measuredIn(unit: ColumnUnit | undefined, meanings: readonly Meaning[]): readonly Meaning[] {
  if (!unit) return meanings;
  const unitsOf = ({ field }: Meaning) => fieldEntry(field).units;
  const isOfUnit = (meaning: Meaning): boolean =>
    unitsOf(meaning)?.some((known) => known === unit || (known === 'fl oz' && unit === 'oz')) === true;
  const measured = meanings.filter(isOfUnit);
  return measured.length > 0 ? measured : meanings.filter((meaning) => !unitsOf(meaning));
}

/** The longest known names in a heading of more words. */
function partMeanings(words: string, unit: ColumnUnit | undefined, per: Basis | undefined): Meaning[] {
  const list = words.split(' ').filter(Boolean);
  for (let length = Math.min(LONGEST_NAME, list.length - 1); length > 0; length--) {
    const found: Meaning[] = [];
    for (let from = 0; from + length <= list.length; from++) {
      const name = list.slice(from, from + length).join(' ');
      if (name.length < 3) continue;
      for (const { field, rank } of BY_NAME.get(name) ?? [])
        found.push({ field, sure: 0.7 - 0.002 * rank, unit, per });
    }
    if (found.length > 0) return found.sort((one, other) => other.sure - one.sure);
  }
  return [];
}

const FREE = /(?:^| )(?:free|frei|without|ohne|no|kein\w*|sans)(?: |$)|frei$/;

/** "Milk", "contains nuts?" and "vegan" as headings of columns of yes and no. What is free of something says nothing that can be taken. */
function markMeanings(whole: string): Meaning[] {
  if (FREE.test(whole)) {
    const diet = DIET_VOCABULARY.meaning(whole);
    return diet?.length === 1 ? [{ field: 'oneDiet', sure: 0.9, of: diet[0] }] : [];
  }
  const bare = whole
    .replace(
      /^(?:contains|has|with|enthalt|mit|allergens?|allergene?|allergy|is|ist|suitable for)(?: an?)? /,
      '',
    )
    .replace(/ (?:enthalten|y n|j n|ja nein|yes no|x)$/, '');
  const allergens = ALLERGEN_VOCABULARY.meaning(bare) ?? unionOf(bare);
  if (allergens && allergens.length > 0 && allergens.length < ALLERGENS.length)
    return [{ field: 'oneAllergen', sure: 0.9, of: allergens.join(' ') }];
  const diet = DIET_VOCABULARY.meaning(bare);
  return diet?.length === 1 ? [{ field: 'oneDiet', sure: 0.9, of: diet[0] }] : [];
}

/** "Milk and eggs", "wheat per gluten" (a slash) are several in one column. */
function unionOf(words: string): string[] | undefined {
  const parts = words.split(/ (?:and|or|per|und|oder|et) /);
  if (parts.length < 2) return undefined;
  const found = parts.map((part) => ALLERGEN_VOCABULARY.meaning(part));
  return found.every((part) => part !== undefined) ? [...new Set(found.flat())] : undefined;
}
