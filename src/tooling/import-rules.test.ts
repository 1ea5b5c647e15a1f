import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { againstTheRules, circlesIn, importGraph, importsUpwards } from './import-rules.ts';
import { ROOT } from './run.ts';

const root = mkdtempSync(path.join(tmpdir(), 'imports-'));
afterAll(() => rmSync(root, { recursive: true }));

const file = (name: string, ...imported: string[]) => {
  const at = path.join(root, 'src', name);
  mkdirSync(path.dirname(at), { recursive: true });
  const code = imported.map((specifier) => `import type { X } from '${specifier}';`).join('\n');
  writeFileSync(at, name.endsWith('.svelte') ? `<script lang="ts">\n${code}\n</script>\n<p>x</p>` : code);
};
file('lib/planning/a.ts', './b.ts', 'zod');
file('lib/planning/b.ts', './c.ts');
file('lib/planning/c.ts', './a.ts');
file('lib/planning/d.ts', './a.ts');
file('lib/texts/say.ts', '$lib/components/Field.svelte');
file('lib/components/Field.svelte', '$lib/planning/d', '../dates');
file('lib/dates.ts');
file('routes/+page.svelte', '$lib/components/Field.svelte');

test('files are found by every way of naming them, types included', () => {
  const graph = importGraph(root);
  expect([...graph.get('src/lib/components/Field.svelte')!]).toEqual([
    'src/lib/planning/d.ts',
    'src/lib/dates.ts',
  ]);
  expect([...graph.get('src/lib/planning/a.ts')!]).toEqual(['src/lib/planning/b.ts']);
});

test('a circle is named by its files, and who only looks at it is none of them', () => {
  expect(circlesIn(importGraph(root))).toEqual([
    ['src/lib/planning/a.ts', 'src/lib/planning/b.ts', 'src/lib/planning/c.ts'],
  ]);
});

test('a room imports only from those before it', () => {
  expect(importsUpwards(importGraph(root), ['planning', 'texts', 'lib', 'components', 'routes'])).toEqual([
    ['src/lib/texts/say.ts', 'src/lib/components/Field.svelte'],
  ]);
});

test('the sources keep to the rules', () => {
  expect(againstTheRules(ROOT)).toEqual([]);
});
