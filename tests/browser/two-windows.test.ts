/* Two people save the same part of the settings, or of the equipment, in windows that both opened before. */
import type { Page } from 'playwright';
import { expect, test } from 'vitest';
import { barriers, newDemoTrip, startApp } from './harness.ts';

const app = startApp();
const REFUSED = /status of 409/;
const field = (page: Page, name: string) => page.locator(`[name="${name}"]`);

async function save(
  page: Page,
  { name, part }: { name: string; part: string },
  value: string,
): Promise<void> {
  await field(page, name).fill(value);
  await page.getByRole('button', { name: `Save ${part}`, exact: true }).click();
}
const saved = (page: Page) => page.getByRole('status').filter({ hasText: 'saved' }).waitFor();

const PAGES = [
  {
    address: '/settings',
    same: { name: 'hotWaterC', part: 'Water' },
    values: ['70', '72', '77'],
    other: { name: 'repeatAfterDays', part: 'Menu' },
  },
  {
    address: '/kitchen/equipment',
    same: { name: 'storageTemperatureC', part: 'Shelf life' },
    values: ['14', '15', '11'],
    other: { name: 'readyDaysBefore', part: 'Calendar' },
  },
] as const;

for (const { address, same, values, other } of PAGES)
  for (const scripts of [true, false])
    test(`${address}, ${scripts ? 'with' : 'without'} scripts: the second is told what the first one saved, and keeps what they typed`, async () => {
      const [before, theirs, mine] = values;
      const first = await app.open(address, { scripts });
      await save(first, same, before);
      await saved(first);

      const second = await app.open(address, { scripts, expected: REFUSED });
      await save(first, same, theirs);
      await saved(first);
      // Another part is another matter.
      await save(first, other, '2');
      await saved(first);

      await save(second, same, mine);
      const newer = second.getByRole('region', { name: 'Someone else saved this section' });
      await newer.waitFor();
      expect(await newer.locator('tbody tr').allInnerTexts()).toEqual([
        expect.stringMatching(new RegExp(`\\s${mine}\\s+${theirs}$`)),
      ]);
      expect(await field(second, same.name).inputValue()).toBe(mine);
      if (scripts) expect(await barriers(second)).toEqual([]);

      await save(second, same, mine);
      await saved(second);
      expect(await field(second, same.name).inputValue()).toBe(mine);
      expect(await field(second, other.name).inputValue()).toBe('2');
    });

test('a weight typed in grams stays one where another window chose ounces', async () => {
  const trip = await newDemoTrip(app);
  const water = await app.open(`${trip}/water`);
  const settings = await app.open('/settings');
  await settings.getByRole('radio', { name: /^US customary/ }).check();
  await settings.getByRole('button', { name: 'Save Units and money' }).click();
  await saved(settings);

  await water.locator('#water summary', { hasText: 'Change' }).click();
  await field(water, 'stove.potG').fill('300');
  await water.locator('form[action="?/water"]').getByRole('button', { name: 'Save' }).click();
  await saved(water);
  const { stove } = await (await water.request.get(`${trip}/trip.json`)).json();
  expect(stove.potG).toBe(300);
});
