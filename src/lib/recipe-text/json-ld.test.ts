import { describe, expect, it } from 'vitest';
import { exampleRecipe } from '../../../tests/support/kitchen-examples.ts';
import { jsonLdOf, looksLikeJsonLd, readJsonLd } from './json-ld.ts';

/** As schema.org describes the type Recipe. */
const RECIPE = {
  '@context': 'https://schema.org/',
  '@type': 'Recipe',
  name: 'Lentil soup',
  recipeYield: '4 servings',
  recipeIngredient: ['250 g red lentils', '1 onion', '1 cup glorbnax'],
  recipeInstructions: [
    { '@type': 'HowToStep', text: 'Fry the onion.' },
    { '@type': 'HowToSection', name: 'Then', itemListElement: [{ '@type': 'HowToStep', text: 'Simmer.' }] },
  ],
};

describe('schema.org Recipe', () => {
  it.each<[string, unknown]>([
    ['alone', RECIPE],
    ['in a list', [{ '@type': 'WebSite' }, RECIPE]],
    [
      'in a graph',
      {
        '@context': 'https://schema.org',
        '@graph': [{ '@type': 'Organization' }, { ...RECIPE, '@type': ['Recipe', 'NewsArticle'] }],
      },
    ],
  ])('is read %s', (_, data) => {
    const recipe = readJsonLd(JSON.stringify(data));
    expect(recipe).toMatchObject({ name: 'Lentil soup', servings: 4, method: ['Fry the onion.', 'Simmer.'] });
    expect(recipe!.lines.map(({ unsettled }) => unsettled)).toEqual([undefined, undefined, 'food unknown']);
  });

  it('is read from a saved page, of which nothing else is', () => {
    const page = `<!doctype html><script>alert(1)</script><p>9 cups sugar</p>
      <script type="application/ld+json">{broken</script>
      <script data-x type='application/ld+json'>${JSON.stringify({ ...RECIPE, name: 'Soup &amp; <b>bread</b>', recipeYield: [4, '4 bowls'] })}</script>`;
    expect(looksLikeJsonLd(page)).toBe(true);
    expect(readJsonLd(page)).toMatchObject({ name: 'Soup & bread', servings: 4, lines: { length: 3 } });
    expect(readJsonLd('<p>no data</p>')).toBeUndefined();
    expect(readJsonLd('{"@type":"Person"}')).toBeUndefined();
  });

  it('is written, and read back with the same lines', () => {
    const recipe = { ...exampleRecipe(), toSettle: ['1 cup glorbnax'] };
    const written = jsonLdOf(recipe);
    expect(written).toMatchObject({ '@context': 'https://schema.org', '@type': 'Recipe', name: recipe.name });
    const back = readJsonLd(JSON.stringify(written));
    expect(back).toMatchObject({ name: recipe.name, servings: recipe.servings });
    expect(back!.lines).toHaveLength(recipe.ingredients.length + 1);
  });
});
