/**
 * How labels and lists of ingredients name allergens in English, German and French. Sources: Regulation (EU) 1169/2011, Annex II, in the three languages; FALCPA 2004 and the FASTER Act 2021 of
 * the US; spellings of both sides of the Atlantic. No name may be taken for nothing: what is not known is refused by name, so that somebody looks at it.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readCell } from '../../src/lib/shelf-csv/read-cell.ts';

const RULES = { unit: undefined, decimalMark: '.', dateOrder: 'iso', currency: 'EUR' } as const;
const read = (text: string) => readCell({ kind: 'allergens' }, text, RULES);
const codes = (text: string) => {
  const reading = read(text);
  return 'value' in reading ? [...((reading.value as string[] | undefined) ?? [])].sort() : reading.reason;
};

const NAMES: readonly (readonly [names: string, codes: string])[] = [
  ['wheat|Weizen|blé|wheat flour|Weizenmehl|farine de blé', 'wheat'],
  // Annex II said "kamut" for khorasan wheat until Regulation (EU) 78/2014, and labels still do.
  [
    'khorasan wheat|Khorasan|Khorasan-Weizen|blé de khorasan|blé khorasan|oriental wheat|kamut',
    'gluten wheat',
  ],
  [
    'triticale|spelt|Dinkel|épeautre|durum wheat|Hartweizen|Grünkern|farro|bulgur|couscous|seitan',
    'gluten wheat',
  ],
  ['rye|Roggen|seigle|barley|Gerste|orge|oats|Hafer|avoine|rolled oats|barley malt|Gerstenmalz', 'gluten'],
  ['cereals containing gluten|glutenhaltiges Getreide|céréales contenant du gluten', 'gluten'],
  ['crustaceans|Krebstiere|crustacés|prawns|Garnelen|crevettes|crayfish|lobster|Hummer', 'crustaceans'],
  ['eggs|Eier|œufs|oeufs|egg white|Eigelb|egg powder|whole egg powder|albumen', 'egg'],
  ['fish|Fisch|poissons|anchovies|Lachs|saumon|Thunfisch|thon|fish sauce', 'fish'],
  ['peanuts|Erdnüsse|arachides|cacahuètes|groundnuts|peanut butter|Erdnussbutter', 'peanut'],
  [
    'soybeans|soya|soya beans|soy beans|soya bean|Sojabohnen|soja|graines de soja|soy sauce|tofu|soya lecithin',
    'soy',
  ],
  [
    'milk|Milch|lait|whey|whey powder|casein|Kasein|caséine|sodium caseinate|Molke|lactosérum|ghee|lactose',
    'milk',
  ],
  ['skimmed milk powder|milk protein|Milchpulver|lait en poudre|Sahne|crème fraîche|cheese|yoghurt', 'milk'],
  ['almonds|Mandeln|amandes|ground almonds|gemahlene Mandeln|almond flour|marzipan', 'nuts'],
  ['hazelnuts|Haselnüsse|noisettes|walnuts|Walnüsse|noix|noix de grenoble', 'nuts'],
  ['cashews|Kaschunüsse|Cashewkerne|noix de cajou|pecan nuts|Pekannüsse|noix de pécan', 'nuts'],
  ['Brazil nuts|Paranüsse|noix du Brésil|pistachio nuts|Pistazien|pistaches', 'nuts'],
  [
    'macadamia nuts|Macadamianüsse|noix de macadamia|Queensland nuts|Queenslandnüsse|noix du Queensland',
    'nuts',
  ],
  ['tree nuts|Schalenfrüchte|fruits à coque|Nüsse', 'nuts'],
  ['celery|Sellerie|céleri|celeriac|Knollensellerie|céleri-rave|celery salt', 'celery'],
  ['mustard|Senf|moutarde|mustard seeds|Senfkörner|graines de moutarde', 'mustard'],
  ['sesame seeds|Sesam|graines de sésame|tahini|Tahin|sesame oil|Sesamöl', 'sesame'],
  [
    'sulphur dioxide|sulfites|sulphites|Schwefeldioxid|Sulfite|E220|E 223|sodium metabisulphite|anhydride sulfureux',
    'sulphites',
  ],
  ['lupin|Lupinen|lupin flour|farine de lupin|lupine', 'lupin'],
  [
    'molluscs|Weichtiere|mollusques|mussels|Muscheln|moules|oysters|Austern|squid|calamari|scallops',
    'molluscs',
  ],
];
const SPELLINGS = NAMES.flatMap(([names, meant]) => names.split('|').map((name) => [name, meant] as const));

it('there are more than the 92 awkward spellings that were missed or refused before', () =>
  expect(SPELLINGS.length).toBeGreaterThan(150));

it.each(SPELLINGS)('%s is %s', (name, meant) => expect(codes(name)).toEqual(meant.split(' ')));

describe('around a list', () => {
  it.each([
    ['Contains: milk, soya', 'milk soy'],
    ['contains milk', 'milk'],
    ['Enthält: Milch, Eier.', 'egg milk'],
    ['Contient : lait, œufs', 'egg milk'],
    ['May contain nuts', 'nuts'],
    ['May contain: almonds, sesame', 'nuts sesame'],
    ['may contain traces of peanuts', 'peanut'],
    ['Milk. May contain nuts.', 'milk nuts'],
    ['milk (traces)', 'milk'],
    ['gluten (wheat, rye)', 'gluten wheat'],
    ['nuts (almonds, cashews)', 'nuts'],
    ['Kann Spuren von Nüssen enthalten', 'nuts'],
    ['Spuren von Sellerie', 'celery'],
    ['Peut contenir des traces de fruits à coque', 'nuts'],
    ['traces éventuelles de lait', 'milk'],
    ['Allergens: egg / fish', 'egg fish'],
    ['milk and soya or sesame', 'milk sesame soy'],
  ])('%s', (text, meant) => expect(codes(text)).toEqual(meant.split(' ')));

  it('traces are said to count', () => expect(read('May contain: nuts')).toHaveProperty('doubt'));

  it.each([
    'milk-free',
    'no nuts',
    'without gluten',
    'ohne Milch',
    'laktosefrei',
    'sans gluten',
    'free from nuts',
    'does not contain milk',
    'milk xyzzy',
    'unobtainium',
    'contains:',
    'lecithin',
  ])('%s is refused, not read as something or nothing', (text) =>
    expect(read(text)).toHaveProperty('reason'),
  );
});

it('no name is lost beside others, whatever parts them and stands before them', () =>
  fc.assert(
    fc.property(
      fc.array(fc.constantFrom(...SPELLINGS), { minLength: 1, maxLength: 6 }),
      fc.constantFrom(', ', '; ', ' / ', ' & ', ' and ', ' und ', ' et ', '\n', '. '),
      fc.constantFrom('', 'Contains: ', 'may contain ', 'Kann Spuren von ', 'Peut contenir des traces de '),
      (some, between, before) => {
        const meant = new Set(some.flatMap(([, names]) => names.split(' ')));
        expect(codes(before + some.map(([name]) => name).join(between))).toEqual([...meant].sort());
      },
    ),
    { numRuns: 500, seed: 1169 },
  ));
