/* Against `intl-messageformat`, a published implementation of ICU MessageFormat, over every text of every language. */
import { IntlMessageFormat } from 'intl-messageformat';
import { expect, it, test } from 'vitest';
import { catalogOf, translationInto } from './catalogs.ts';
import { ALL_LANGUAGES, type Language } from './languages.ts';
import { formatMessage, parseMessage, type Conventions, type Part, type Values } from './message-format.ts';

const conventionsOf = (language: Language): Conventions => ({
  writeNumber: (value) => new Intl.NumberFormat(language).format(value),
  pluralOf: (value, type) => new Intl.PluralRules(language, { type }).select(value),
});

const ours = (pattern: string, tags: boolean, values: Values, language: Language): readonly Part[] =>
  formatMessage(parseMessage(pattern, tags), values, conventionsOf(language));

function theirs(pattern: string, tags: boolean, values: Values, language: Language): readonly Part[] {
  const marks = Array.from(pattern.matchAll(/<(\w+)>/g), ([, tag = '']) => [
    tag,
    (words: readonly unknown[]) => ({ words: words.join(''), tag }),
  ]);
  return new IntlMessageFormat(pattern, language, undefined, { ignoreTag: !tags })
    .formatToParts<Part>({ ...values, ...(tags ? Object.fromEntries(marks) : {}) })
    .map(({ value }) => (typeof value === 'object' ? value : { words: String(value) }));
}

/** For every value that a text may name: numbers that are counted differently, a name of a branch, and words that look like signs. */
function valuesFor(pattern: string): Values[] {
  const names = Array.from(pattern.matchAll(/\{\s*(\w+)/g), ([, name = '']) => name);
  const kinds = new Map(
    Array.from(pattern.matchAll(/\{\s*(\w+)\s*,\s*(\w+)/g), ([, name = '', kind = '']) => [name, kind]),
  );
  const branches = Array.from(pattern.matchAll(/([\w-]+)\s*\{/g), ([, branch = '']) => branch);
  return [0, 1, 2, 1.5, 1234.25, ...branches, "{'x'} #"].map((value) =>
    Object.fromEntries(
      names.map((name) => {
        const isCounted = ['plural', 'number', 'selectordinal'].includes(kinds.get(name) ?? '');
        return [name, isCounted && typeof value === 'string' ? value.length : value];
      }),
    ),
  );
}

test.each(ALL_LANGUAGES)('says every text in "%s" as the published implementation does', (language) => {
  const say = translationInto(language);
  const texts = Object.keys(catalogOf('de')).map((source) => say(source) || source);
  expect(texts.length).toBeGreaterThan(2500);
  for (const text of texts)
    for (const values of valuesFor(text))
      for (const tags of [false, /<\w+>/.test(text)])
        expect(ours(text, tags, values, language), text).toEqual(theirs(text, tags, values, language));
});

test.each([
  "it's '{literal}', isn''t it",
  "{n, plural, one {# '#' is {who}} other {{n, number} or #}} # '{'",
  '{n, selectordinal, one {#st} two {#nd} few {#rd} other {#th}}',
  '{n, plural, =0 {none} =1 {one} other {{who, select, a {A} other {{n, plural, one {<b># x</b>} other {<b>#</b> y}}}}}}',
  'a < b and <b>{who}</b> > c',
])('says %j as the published implementation does', (pattern) => {
  for (const n of [0, 1, 2, 3, 11, 21])
    for (const who of ['a', '<b>', "'"])
      for (const tags of [true, false])
        expect(ours(pattern, tags, { n, who }, 'en')).toEqual(theirs(pattern, tags, { n, who }, 'en'));
});

test.each(['{', '{n', '{n, plural, one {x}}', '{n, plural, one {x} other {y}', '<b>x', 'x</b>', '{n, date}'])(
  'refuses %j',
  (pattern) => expect(() => parseMessage(pattern, true)).toThrow(SyntaxError),
);

it('refuses to leave a value out', () => {
  expect(() => formatMessage(parseMessage('at least {least}', true), {}, conventionsOf('en'))).toThrow(
    /least/,
  );
});
