import fc from 'fast-check';

/** Texts that have troubled programs before. */
export const TEXTS = [
  '',
  ' ',
  '0',
  '-1',
  '1e308',
  '1e-320',
  '-0',
  'NaN',
  'Infinity',
  '9007199254740993',
  '1,5',
  '1.234,5',
  '0x10',
  '١٢',
  '²',
  '__proto__',
  'constructor',
  'toString',
  'null',
  'undefined',
  '[object Object]',
  'true',
  "'; drop table lots; --",
  '" or ""="',
  '${7*7}',
  '{x}',
  "'{",
  '{n, plural, other {#}}',
  '<b>x</b>',
  '</script>',
  '<!--',
  ']]>',
  '&amp;',
  '&#0;',
  '../../etc/passwd',
  '..%2f..%2fetc',
  '%00',
  '%',
  '%zz',
  '/',
  '\\',
  '.',
  '..',
  'a/b',
  'a?b#c',
  'con',
  'x\0y',
  '\r\nset-cookie: a=b',
  '\ufeff',
  '\ud800',
  '\u202e',
  'é',
  'e\u0301',
  '👩‍🌾',
  'ß'.repeat(50),
  '2026-02-30',
  '2026-13-01',
  '0000-00-00',
  '9999-12-31',
  '10000-01-01',
  '2026-07-04T00:00:00Z',
  '-2026-01-01',
  '=1+1',
  '@SUM(A1)',
  '\t=1',
  '[]',
  '{}',
  '[[',
  '{"a":',
  '[1e999]',
  '{"__proto__":{"polluted":1}}',
  ' '.repeat(3000),
  '('.repeat(500),
  '[0]'.repeat(100),
  'a'.repeat(5000),
  '1'.repeat(400),
  '-'.repeat(400),
  '\n'.repeat(200),
  '00000000-0000-4000-8000-000000000000',
] as const;

export const text: fc.Arbitrary<string> = fc.oneof(
  { weight: 3, arbitrary: fc.constantFrom(...TEXTS) },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 30 }) },
  { weight: 1, arbitrary: fc.double().map(String) },
  { weight: 1, arbitrary: fc.integer({ min: -5, max: 500 }).map(String) },
);

/** One change somewhere in a text: a piece taken out, doubled, moved, or something put in. */
type Change = {
  readonly at: number;
  readonly length: number;
  readonly how: 'out' | 'twice' | 'in' | 'flip' | 'cut';
  readonly with: string;
};
const change: fc.Arbitrary<Change> = fc.record({
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  length: fc.nat(40),
  how: fc.constantFrom('out', 'twice', 'in', 'flip', 'cut'),
  with: text,
});

function applied(before: string, { at, length, how, with: put }: Change): string {
  const from = Math.floor(at * before.length);
  const [head, piece, tail] = [
    before.slice(0, from),
    before.slice(from, from + length),
    before.slice(from + length),
  ];
  switch (how) {
    case 'out':
      return head + tail;
    case 'twice':
      return head + piece.repeat(1 + (length % 20)) + tail;
    case 'in':
      return head + put + piece + tail;
    case 'flip':
      return head + put.slice(0, length) + tail;
    case 'cut':
      return head;
  }
}

/** Texts of a corpus, each with a few changes. */
export const changed = (corpus: readonly string[]): fc.Arbitrary<string> =>
  fc
    .tuple(fc.constantFrom(...corpus), fc.array(change, { maxLength: 4 }))
    .map(([base, changes]) => changes.reduce(applied, base));

/** JSON of the form of a value, with some of what is in it replaced by something else, left out, or nested out of reason. */
export const changedJson = (corpus: readonly unknown[]): fc.Arbitrary<string> =>
  fc.oneof(
    {
      weight: 4,
      arbitrary: fc
        .tuple(fc.constantFrom(...corpus), fc.array(fc.tuple(fc.nat(), odd), { minLength: 1, maxLength: 3 }))
        .map(([base, swaps]) =>
          JSON.stringify(
            swaps.reduce<unknown>((value, [place, put]) => replaced(value, place, put), base),
          ).replaceAll('"%proto%"', '"__proto__"'),
        ),
    },
    { weight: 1, arbitrary: changed(corpus.map((value) => JSON.stringify(value))) },
    {
      weight: 1,
      arbitrary: fc.constantFrom(
        '['.repeat(10_000),
        '['.repeat(10_000) + ']'.repeat(10_000),
        '{"a":'.repeat(10_000) + '1' + '}'.repeat(10_000),
        '{"__proto__":{"polluted":1},"constructor":{"prototype":{"polluted":1}}}',
      ),
    },
  );

const odd: fc.Arbitrary<unknown> = fc.oneof(
  text,
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.integer(),
  fc.constantFrom(
    null,
    true,
    [],
    {},
    [[]],
    { '%proto%': { polluted: 1 } },
    { constructor: { prototype: { polluted: 1 } } },
  ),
  fc.array(fc.integer(), { maxLength: 200 }),
);

function replaced(root: unknown, place: number, put: unknown): unknown {
  const places: (readonly (string | number)[])[] = [];
  const collect = (value: unknown, path: readonly (string | number)[]) => {
    places.push(path);
    if (typeof value === 'object' && value !== null)
      for (const [key, inner] of Object.entries(value)) collect(inner, [...path, key]);
  };
  collect(root, []);
  const path = places[place % places.length] ?? [];
  const copy = structuredClone(root);
  const last = path.at(-1);
  if (last === undefined) return put;
  let holder = copy as Record<string | number, unknown>;
  for (const key of path.slice(0, -1)) holder = holder[key] as Record<string | number, unknown>;
  if (place % 7 === 0) delete holder[last];
  else holder[last] = put;
  if (place % 11 === 0) holder[`${last}x`] = put;
  return copy;
}
