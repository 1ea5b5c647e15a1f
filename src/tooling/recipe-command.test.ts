import { Readable } from 'node:stream';
import { expect, it } from 'vitest';
import { recipeCommand } from './recipe-command.ts';

const run = (text: string, ...args: string[]) =>
  recipeCommand(['--text', '-', ...args], Readable.from([Buffer.from(text)]));

it('writes what was understood, and scales it', async () => {
  const { exitCode, output } = await run('Rice\nServes 2\n200 g rice\n1 tbsp olive oil', '--servings', '4');
  expect(exitCode).toBe(0);
  const report = JSON.parse(output);
  expect(report.servings).toBe(4);
  expect(report.lines).toEqual([
    {
      text: '200 g rice',
      food: {
        source: 'USDA Standard Reference 26',
        number: '20444',
        name: 'Rice, white, long-grain, regular, raw, unenriched',
        kcalPer100g: 365,
      },
      grams: { value: 400, low: 400, high: 400 },
      settled: true,
    },
    expect.objectContaining({ text: '1 tbsp olive oil', grams: expect.objectContaining({ value: 27 }) }),
  ]);
  expect(Object.keys(report.totals)).toEqual(Object.keys(report.perServing));
  expect(report.totals.energyKcal).toBeCloseTo(400 * 3.65 + 27 * 8.84, 0);
  expect(report.totals.dryG + report.totals.waterG).toBeCloseTo(report.totals.rawG, 0);
  expect(report.allergens).toEqual({ stated: [], open: [] });
});

it('exits with 2 where lines are left to settle, and writes the rest all the same', async () => {
  const { exitCode, output, errors } = await run('200 g rice\n1 cup glorbnax');
  expect(exitCode).toBe(2);
  const report = JSON.parse(output);
  expect(report.lines[1]).toEqual({ text: '1 cup glorbnax', food: null, grams: null, settled: false });
  expect(report.allergens.open).toEqual(['1 cup glorbnax']);
  expect(errors).toContain('1 cup glorbnax');
});

it('says what is wrong with an input', async () => {
  expect(await run('\n\n')).toMatchObject({ exitCode: 1, output: '' });
  expect(await run('200 g rice', '--servings', 'many')).toMatchObject({ exitCode: 1 });
  expect(await run('200 g rice', '--format', 'xml')).toMatchObject({ exitCode: 1 });
  expect(await recipeCommand(['--text', '/no/such/file'], Readable.from([]))).toMatchObject({ exitCode: 1 });
  expect(await recipeCommand([], Readable.from([]))).toMatchObject({ exitCode: 1 });
});

it('writes text to read', async () => {
  const { output } = await run('200 g rice', '--format', 'text');
  expect(output).toContain('Rice, white, long-grain');
  expect(output).toContain('730 kcal');
});
