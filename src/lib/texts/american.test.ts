import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { AMERICAN_WORDS, inAmerican, markdownInAmerican } from './american.ts';
import { catalogOf, translationInto } from './catalogs.ts';

const method = readFileSync(new URL('../../../docs/method.md', import.meta.url), 'utf8');
const sources = Object.keys(catalogOf('de'));
const american = translationInto('en-US');
/** Words alone: without values, names of branches and tags. */
const wordsOf = (pattern: string) => pattern.replace(/\{\w+|[\w=]+ \{|<\/?\w+>/g, '{').toLowerCase();
const british = new RegExp(String.raw`\b(${Object.keys(AMERICAN_WORDS).join('|')})\b`);

it('leaves no British word in an American text, nor in the method', () => {
  const left = sources.filter((source) => british.test(wordsOf(american(source) ?? '')));
  expect(left).toEqual([]);
  expect(
    british.exec(
      markdownInAmerican(method)
        .replace(/`[^`]*`|\]\([^)]*\)/g, '')
        .toLowerCase(),
    ),
  ).toBeNull();
});

it('has no word that is not said', () => {
  const said = `${sources.map(wordsOf).join('\n')}\n${method}`.toLowerCase();
  expect(
    Object.keys(AMERICAN_WORDS).filter((word) => !new RegExp(String.raw`\b${word}\b`).test(said)),
  ).toEqual([]);
});

it('has whole texts of its own only for texts that are said', () => {
  expect(Object.keys(catalogOf('en-US')).filter((source) => !sources.includes(source))).toEqual([]);
});

it('changes words alone, small and large as they were', () => {
  expect(
    inAmerican('Fibre, minced beef and {fibre} of <tin>a tin</tin>, {bin, select, bin {the bin} other {#}}.'),
  ).toBe('Fiber, ground beef and {fibre} of <tin>a can</tin>, {bin, select, bin {the trash} other {#}}.');
  expect(inAmerican('{count, plural, one {# litre} other {# litres {litre, number}}} < 3')).toBe(
    '{count, plural, one {# liter} other {# liters {litre, number}}} < 3',
  );
  expect(inAmerican('binding, recentred')).toBe('binding, recentred');
  expect(markdownInAmerican('A `fibre` of [fibres](#fibre).')).toBe('A `fibre` of [fibers](#fibre).');
});
