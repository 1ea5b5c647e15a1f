import { describe, expect, it } from 'vitest';
import { readLine } from './read-line.ts';

describe('a line of a recipe', () => {
  /** Weights are stated, or those of the published table's measures; what the table does not have is common practice. */
  it.each([
    ['500 g minced beef', '23567', 500],
    ['2 cups rice, dry', '20444', 370],
    ['1 large onion, chopped', '11282', 150],
    ['3 cloves garlic', '11215', 9],
    ['10 cherry tomatoes', '11529', 170],
    ['12 Kirschtomaten', '11529', 204],
    ['2 plum tomatoes', '11529', 124],
    ['1 Stange Sellerie', '11143', 40],
    ['1 Kohlrabi', '11241', 250],
    ['1 tin (400 g) tomatoes', '11531', 400],
    ['1 (14.5-ounce) can diced tomatoes, undrained', '11531', 411],
    ['2 x 400g tins chopped tomatoes', '11531', 800],
    ['400g can chickpeas, drained and rinsed', '16358', 240],
    ['2 (15 oz) cans black beans, drained and rinsed', '16015', 510],
    ['½ cup unsalted butter, softened (1 stick)', '01145', 113.5],
    ['1 stick butter', '01001', 113],
    ['1½ tsp ground cumin', '02014', 3],
    ['2-3 tbsp olive oil', '04053', 33.75],
    ['a pinch of salt', '02047', 0.37],
    ['1 red pepper, deseeded and sliced', '11821', 119],
    ['1 pepper, diced', '11821', 119],
    ['2 celery sticks, finely chopped', '11143', 80],
    ['200g/7oz plain flour', '20581', 200],
    ['1 lb 2 oz potatoes', '11352', 510.3],
    ['juice of 1 lemon', '09152', 48],
    ['2 EL Olivenöl', '04053', 27.4],
    ['1 TL Salz', '02047', 6.2],
    ['1 Dose gehackte Tomaten (400 g)', '11531', 400],
    ['3 Knoblauchzehen', '11215', 9],
    ['1 Becher Sahne', '01053', 200],
    ['1 Päckchen Trockenhefe', '18375', 7],
    ['1 1/4 cups packed brown sugar', '19334', 275],
    ['3 large eggs', '01123', 150],
    ['2 cups shredded cheddar cheese', '01009', 226],
    ['4 salmon fillets (about 150 g each)', '15236', 600],
    ['Onions - 2', '11282', 220],
    ['Flour: 250 g', '20581', 250],
    ['1 cup (150g) frozen peas', '11312', 150],
    ['3/4 cup plus 2 tablespoons all-purpose flour', '20581', 109.4],
    ['2 T butter', '01001', 28.4],
    ['3 t salt', '02047', 18],
    ['Saft einer halben Zitrone', '09152', 24],
    ['1 tbsp fresh ginger, minced', '11216', 6],
    ['6 cups shredded cabbage', '11109', 420],
    ['1/4 cup honey', '19296', 84.75],
    ['1,5 kg Kartoffeln', '11352', 1500],
    ['ein halber Bund Schnittlauch', '11156', 12.5],
  ])('%s', (text, number, grams) => {
    const line = readLine(text);
    expect(line.unsettled).toBeUndefined();
    expect(line.food?.number).toBe(number);
    expect(Math.abs((line.grams?.value ?? 0) / grams - 1)).toBeLessThan(0.03);
    expect(line.grams!.low).toBeLessThanOrEqual(line.grams!.value);
    expect(line.grams!.high).toBeGreaterThanOrEqual(line.grams!.value);
    expect(line.text).toBe(text);
  });

  it('says how sure its weight is: a stated one exactly, pieces by the sizes of the table', () => {
    expect(readLine('500 g rice').grams).toEqual({ value: 500, low: 500, high: 500 });
    expect(readLine('1 onion').grams).toEqual({ value: 110, low: 70, high: 150 });
    expect(readLine('2-3 carrots').grams).toMatchObject({ value: 152.5, low: 100, high: 216 });
  });

  it('of two foods to choose from counts the allergens of both', () => {
    expect(readLine('2 tbsp butter or soy sauce').food?.allergens).toEqual([
      'milk',
      'wheat',
      'soy',
      'gluten',
    ]);
    expect(readLine('2 tbsp olive oil or mayonnaise').food?.allergens).toBeUndefined();
  });

  it('never drops a food beside the one it weighs that may hold an allergen', () => {
    for (const text of [
      '200 g beef, browned in butter',
      '2 tbsp cornflour mixed with 2 tbsp milk',
      'salt, pepper and mustard',
      'rice, cheese and butter',
      '1 cup frozen vegetables (peas, celery)',
    ])
      expect(readLine(text).unsettled, text).toBe('food unsure');
    expect(readLine('1 tbsp cornflour mixed with 2 tbsp water').unsettled).toBeUndefined();
  });

  it('is left to settle where the food, or what it weighs, is not known', () => {
    expect(readLine('1 cup glorbnax')).toMatchObject({ unsettled: 'food unknown' });
    expect(readLine('200 g vegan feta')).toMatchObject({ unsettled: 'food unsure' });
    expect(readLine('sour cream, to serve')).toMatchObject({ unsettled: 'no amount' });
  });

  it("takes the user's own food of that name", () => {
    const own = { ...readLine('1 kg rice').food!, name: 'Glorbnax' };
    expect(readLine('200 g glorbnax', [own])).toMatchObject({ food: own, grams: { value: 200 } });
  });
});
