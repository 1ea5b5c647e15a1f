import { afterEach, expect, it } from 'vitest';
import { say, sayRich, sayList, sayNumber, text, useCatalog, useLanguage, type Language } from './say.ts';

let spoken: Language = 'en';
useLanguage(() => spoken);
useCatalog('de', {
  'Nothing is missing.': 'Es fehlt nichts.',
  '{count, plural, one {# pouch} other {# pouches}} for {who}':
    '{count, plural, one {# Beutel} other {# Beutel}} für {who}',
  'at least {least}': 'mindestens {least}',
  'about <em>{who}</em>': 'über <em>{who}</em>',
});
afterEach(() => {
  spoken = 'en';
});

it('says a text in the language around, and the English one where there is no other', () => {
  expect(say('Nothing is missing.')).toBe('Nothing is missing.');
  spoken = 'de';
  expect(say('Nothing is missing.')).toBe('Es fehlt nichts.');
  expect(say('Something is missing.')).toBe('Something is missing.');
});

it('puts in values, and counts as the language does', () => {
  const pouches = (count: number) =>
    say('{count, plural, one {# pouch} other {# pouches}} for {who}', { count, who: "O'Hara {x}" });
  expect(pouches(1)).toBe("1 pouch for O'Hara {x}");
  expect(pouches(1234.56)).toBe("1,234.6 pouches for O'Hara {x}");
  spoken = 'de';
  expect(pouches(1234.56)).toBe("1.234,6 Beutel für O'Hara {x}");
});

it('marks parts by the tags of the text, never by those of a value', () => {
  const about = (name: string) => sayRich('<strong>{name}</strong> of {name}; <link>more</link>', { name });
  for (const name of [
    'Ada',
    '<strong>x</strong>',
    '<link>x</link>',
    "<b>'{x}'",
    '</strong>',
    '{name}',
    "'<link>",
  ])
    expect(about(name)).toEqual([
      { words: name, tag: 'strong' },
      { words: ` of ${name}; ` },
      { words: 'more', tag: 'link' },
    ]);
  spoken = 'de';
  expect(sayRich('about <em>{who}</em>', { who: '<em>' })).toEqual([
    { words: 'über ' },
    { words: '<em>', tag: 'em' },
  ]);
});

it('takes no value for a pattern', () => {
  for (const who of ['{who}', '{', "'{'", '{n, plural, other {#}}', '#', '<strong>'])
    expect(say('{count, plural, one {# pouch} other {# pouches}} for {who}', { count: 2, who })).toBe(
      `2 pouches for ${who}`,
    );
});

it('refuses to leave a value out', () => {
  expect(() => say('at least {least}')).toThrow(/least/);
});

it('says what a table holds when it is read, not when it was made', () => {
  const table = { none: text('Nothing is missing.') };
  spoken = 'de';
  expect(say(table.none)).toBe('Es fehlt nichts.');
});

it('writes numbers and lists by the language', () => {
  expect([sayNumber(1234.5), sayList(['a', 'b', 'c'])]).toEqual(['1,234.5', 'a, b and c']);
  spoken = 'de';
  expect([sayNumber(1234.5), sayList(['a', 'b', 'c'])]).toEqual(['1.234,5', 'a, b und c']);
});
