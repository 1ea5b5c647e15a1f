/** Words of one meaning, and plurals that no rule makes; the words on the right are those that are compared. */
const SAME: Readonly<Record<string, string>> = {
  chili: 'chilli',
  chile: 'chilli',
  chilies: 'chilli',
  chillies: 'chilli',
  yogurt: 'yoghurt',
  jogurt: 'yoghurt',
  joghurt: 'yoghurt',
  soya: 'soy',
  can: 'tinned',
  canned: 'tinned',
  tin: 'tinned',
  dose: 'tinned',
  dosen: 'tinned',
  mince: 'ground',
  tk: 'frozen',
  tiefgekuhlt: 'frozen',
  tiefgekuhlte: 'frozen',
  gefrorene: 'frozen',
  leaves: 'leaf',
  halves: 'half',
  loaves: 'loaf',
  wholewheat: 'wholemeal',
  wholegrain: 'wholemeal',
  boullion: 'bouillon',
  bicarb: 'bicarbonate',
  prawns: 'prawn',
  zucchinis: 'zucchini',
  blattes: 'blatt',
};

/** Minced meat is ground meat; minced garlic is no powder. */
const MEATS = new Set([
  'beef',
  'pork',
  'lamb',
  'veal',
  'turkey',
  'chicken',
  'venison',
  'meat',
  'bison',
  'mutton',
]);

/** @returns an English word without its plural; of other words the same for each of its uses, which is all that matters. */
function singular(word: string): string {
  if (word.length < 4 || !word.endsWith('s')) return word;
  if (/(?:ss|us|is)$/.test(word)) return word;
  if (word.endsWith('ies')) return `${word.slice(0, -3)}y`;
  if (/(?:o|sh|ch|x|ss)es$/.test(word)) return word.slice(0, -2);
  return word.slice(0, -1);
}

/**
 * The words of a name of food, made alike: without accents, capitals and English plurals, one spelling for British, American and German
 * words that mean the same.
 *
 * @example foodWords('Tinned Tomatoes') // ['tinned', 'tomato'], as for "canned tomato"
 */
export function foodWords(text: string): string[] {
  return text
    .toLowerCase()
    .replaceAll('ß', 'ss')
    .replaceAll('œ', 'oe')
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .replace(/whole[ -](?=wheat|meal|grain)/g, 'whole')
    .replace(/chick peas?/g, 'chickpea')
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '' && word !== 'of' && word !== 's')
    .map((word) => SAME[word] ?? SAME[singular(word)] ?? singular(word))
    .map((word, _, all) => (word === 'minced' && all.some((each) => MEATS.has(each)) ? 'ground' : word));
}
