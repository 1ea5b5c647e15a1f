import fc from 'fast-check';
import { expect, test } from 'vitest';
import { jsonMembers, NotMembers } from './json-members.ts';

async function* cutInto(text: string, length: number): AsyncGenerator<string> {
  for (let at = 0; at < text.length; at += length) yield text.slice(at, at + length);
}

async function built(text: string, length: number): Promise<Record<string, unknown>> {
  const entries = new Map<string, unknown>();
  for await (const { key, index, text: value } of jsonMembers(cutInto(text, length))) {
    if (value === undefined) entries.set(key, []);
    else if (index === undefined) entries.set(key, JSON.parse(value));
    else if (index === 0) entries.set(key, [JSON.parse(value)]);
    else (entries.get(key) as unknown[]).push(JSON.parse(value));
  }
  return Object.fromEntries(entries);
}

test('the members of any object are those that JSON.parse reads, wherever its text is cut', async () => {
  const objects = fc.dictionary(fc.string(), fc.jsonValue(), { minKeys: 1, noNullPrototype: true });
  await fc.assert(
    fc.asyncProperty(
      objects,
      fc.constantFrom(0, 1, 3),
      fc.integer({ min: 1, max: 9 }),
      async (object, indent, length) => {
        const text = JSON.stringify(object, undefined, indent);
        expect(await built(text, length)).toEqual(JSON.parse(text));
      },
    ),
    { numRuns: 300 },
  );
});

test.each([
  ['', ''],
  ['[1]', ''],
  ['{"a":1', 'a'],
  ['{"a":1} 2', 'a'],
  ['{"a":1}{', 'a'],
  ['{"a":[1,2', 'a[1]'],
  ['{"a":[1}', 'a[0]'],
  ['{"a":[1] 2}', 'a'],
  ['{"a":[1],', 'a'],
  ['{a:1}', ''],
  ['{5:1}', ''],
  ['{"a" 1}', ''],
])('%s is refused, and where', async (text, at) => {
  const refused = await built(text, 4).catch((error: unknown) => error);
  expect(refused).toBeInstanceOf(NotMembers);
  expect(refused).toMatchObject({ at });
});
