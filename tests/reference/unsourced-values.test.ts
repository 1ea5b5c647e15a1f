/*
 * Values whose source was not read again. None is marked as written down from memory any more, but for the table of common foods; what is marked "not rechecked" is listed here with how often, and
 * the numbers may only fall: whoever reads a source takes the mark away and lowers the number.
 */
import { globSync, readFileSync, statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const FILES = globSync(['src/**/*.{ts,svelte,json}', 'docs/method*.md', 'tests/reference/*.ts'], {
  cwd: ROOT,
  exclude: (path) => path.endsWith('.test.ts') && path.startsWith('src'),
}).filter(
  (path) =>
    /\.\w+$/.test(path) && !path.endsWith('unsourced-values.test.ts') && statSync(`${ROOT}/${path}`).isFile(),
);

const FROM_MEMORY = /\(memory\b|[,;] memory[).]|from memory|[,;(] ?Gedächtnis[).]|aus dem Gedächtnis/g;
const NOT_RECHECKED = /not rechecked|nicht nachgeprüft/g;

/** How often a mark stands in each file, where it stands at all. */
function marks(mark: RegExp): Map<string, number> {
  return new Map(
    FILES.flatMap((path) => {
      const count = readFileSync(`${ROOT}/${path}`, 'utf8').match(mark)?.length ?? 0;
      return count > 0 ? [[path.replaceAll('\\', '/'), count] as const] : [];
    }),
  );
}

/** The most marks that each file may have; a file that is not here may have none. */
const MOST_FROM_MEMORY: Readonly<Record<string, number>> = {
  'docs/method.md': 1,
  'docs/method.de.md': 1,
};
const MOST_NOT_RECHECKED: Readonly<Record<string, number>> = {
  'docs/method.md': 5,
  'docs/method.de.md': 4,
  'tests/reference/calorific-values.test.ts': 1,
  'tests/reference/choi-okos.test.ts': 2,
  'tests/reference/din-33466.test.ts': 1,
  'tests/reference/naismith-1892.test.ts': 1,
  'tests/reference/singh-heldman.test.ts': 1,
};
const isOfFoods = (path: string) => path.startsWith('src/lib/foods/') || path.includes('ifct-2017');

function hold(found: Map<string, number>, most: Readonly<Record<string, number>>): void {
  const over = [...found].filter(([path, count]) => !isOfFoods(path) && count > (most[path] ?? 0));
  expect(over).toEqual([]);
}

describe('marks of values without a source that was read', () => {
  it('are looked for where there are sources', () => {
    expect(FILES.length).toBeGreaterThan(200);
    expect('a value (Somebody 1980, memory)'.match(FROM_MEMORY)).toHaveLength(1);
    expect('Werte (Jemand 1980, Gedächtnis)'.match(FROM_MEMORY)).toHaveLength(1);
    expect('a value (Somebody 1980, not rechecked)'.match(NOT_RECHECKED)).toHaveLength(1);
  });

  it('from memory stand for the table of common foods only', () =>
    hold(marks(FROM_MEMORY), MOST_FROM_MEMORY));

  it('not rechecked are no more than they were', () => hold(marks(NOT_RECHECKED), MOST_NOT_RECHECKED));
});
