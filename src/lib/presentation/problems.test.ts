import { afterEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { translationInto } from '../texts/catalogs.ts';
import { useCatalog, useLanguage } from '../texts/say.ts';
import { problemsOf } from './problems.ts';

const Input = z.strictObject({
  name: z.string(),
  count: z.int().min(1).max(9),
  list: z.array(z.number()).max(2),
  kind: z.enum(['a', 'b']),
  on: z.iso.date().optional(),
});
const good = { name: 'n', count: 1, list: [], kind: 'a' };

function problems(change: object) {
  const result = Input.safeParse({ ...good, ...change }, { reportInput: true });
  return result.success ? [] : problemsOf(result.error);
}

afterEach(() => useLanguage(() => 'en'));

describe('problemsOf', () => {
  it.each([
    [{ name: undefined }, 'name', 'is missing; it must be a text', true],
    [{ name: 5 }, 'name', 'must be a text', undefined],
    [{ count: 'many' }, 'count', 'must be a number', undefined],
    [{ count: 1.5 }, 'count', 'must be a whole number', undefined],
    [{ count: 0 }, 'count', 'must be at least 1', undefined],
    [{ count: 10 }, 'count', 'must be at most 9', undefined],
    [{ list: [1, 2, 3] }, 'list', 'must have at most 2 entries', undefined],
    [{ list: {} }, 'list', 'must be a list', undefined],
    [{ kind: undefined }, 'kind', 'must be one of: a, b', true],
    [{ kind: 'c' }, 'kind', 'must be one of: a, b; found "c"', undefined],
    [{ on: 'soon' }, 'on', 'is not of a form that is known', undefined],
    [{ other: 1 }, '(input)', 'has the unknown field "other"; check the spelling or remove it', undefined],
  ])('says of %o what is wrong, where no schema says it', (change, field, message, missing) => {
    expect(problems(change)).toEqual([{ field, message, ...(missing && { missing }) }]);
  });

  it('quotes and names only so much', () => {
    const wide = Object.fromEntries(Array.from({ length: 1000 }, (_, index) => [`x${index}`, 1]));
    const [named] = problems(wide);
    expect(named?.message).toMatch(/^has the unknown fields "x0", .*"x9", …; check/);
    const [quoted] = problems({ kind: 'y'.repeat(1e6) });
    expect(quoted?.message.length).toBeLessThan(150);
    expect(problems({ kind: { toString: 1, valueOf: 1 } })[0]?.message).toContain('found "{…}"');
  });

  it('says it in the language around', () => {
    useCatalog('de', translationInto('de'));
    useLanguage(() => 'de');
    expect(problems({ name: undefined, count: 0 }).map(({ message }) => message)).toEqual([
      'fehlt; muss ein Text sein',
      'muss mindestens 1 sein',
    ]);
  });
});
