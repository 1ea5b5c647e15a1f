/* A journey with a box on the way: packs to the box, what is in it, its paper, and another weight of the packs. */
import { beforeAll, expect, test } from 'vitest';
import { checkPage, newDemoTrip, startApp } from './harness.ts';

const app = startApp();
let trip = '';

beforeAll(async () => {
  trip = await newDemoTrip(app);
});

test('a box is sent ahead, and packs carry no more than is eaten before it, without scripts too', async () => {
  const page = await app.open(`${trip}/loads`);
  const packed = async () => {
    await page.goto(`${app.origin}${trip}/packing`);
    return (await page.getByRole('article').first().innerText()).split('\n').length;
  };
  const before = await packed();

  const form = await app.open(`${trip}/resupply`, { scripts: false });
  await form.getByRole('textbox', { name: 'Place' }).fill('Valley hut');
  await form.getByRole('textbox', { name: 'Day' }).fill('3');
  await form.getByLabel('Empty box').fill('250');
  await form.getByLabel('Post by').fill('2027-01-15');
  await form.getByRole('textbox', { name: 'Label' }).fill('To the keeper, hold for hikers');
  await form.getByRole('button', { name: 'Save place' }).click();
  await form.getByRole('status').filter({ hasText: 'The place is saved' }).waitFor();

  const box = form.getByRole('article', { name: /Valley hut/ });
  const text = await box.innerText();
  expect(text).toMatch(/Day 3, from dinner, to day 5/);
  expect(text).toMatch(/Post by/);
  expect(text).toMatch(/To the keeper/);
  expect(text).toMatch(/\d × \w+/);
  expect(text).toMatch(/Total, with the empty box of 250 g/);
  expect(await packed()).toBeLessThan(before);
  await checkPage(app, `${trip}/resupply`);
});

test('what is wrong with a place is said, and nothing typed is lost; a place can be changed and removed', async () => {
  const page = await app.open(`${trip}/resupply`);
  await page.getByRole('textbox', { name: 'Place' }).fill('Far away');
  await page.getByRole('textbox', { name: 'Day' }).fill('40');
  await page.getByRole('button', { name: 'Save place' }).click();
  await page
    .getByText(/the trip has only \d+ days/)
    .first()
    .waitFor();
  expect(await page.getByRole('textbox', { name: 'Place' }).inputValue()).toBe('Far away');

  await page.goto(`${app.origin}${trip}/resupply?edit=Valley+hut`);
  await page.getByRole('button', { name: 'Remove' }).click();
  await page.getByRole('status').filter({ hasText: 'The place is removed' }).waitFor();
  expect(await page.getByRole('article').count()).toBe(0);
});
