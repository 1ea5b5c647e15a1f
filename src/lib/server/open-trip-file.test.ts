import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { listedMeal } from '../planning/menu/edit-menu.ts';
import { lotsLacking } from '../trip-views/menu.ts';
import { LARGEST_TRIP_FILE_BYTES, openTripFile } from './open-trip-file.ts';
import { planStoredTrip } from './plan-stored-trip.ts';
import { expectUserError, madeUpLot, madeUpTrip, openTestApp, temporaryFolder } from './test-data.ts';

async function file(value: unknown) {
  const path = join(await temporaryFolder(), 'trip.json');
  const text = typeof value === 'string' ? value : JSON.stringify(value);
  await writeFile(path, text);
  return { path, bytes: Buffer.byteLength(text) };
}
const TRIP = madeUpTrip({
  party: [
    { name: 'Ada', allergens: ['milk'], body: { massG: 60_000, heightM: 1.7, ageY: 40, sex: 'female' } },
  ],
  days: [{ campWater: 'dry', walkingH: 5.5 }],
  menu: [
    {
      day: 1,
      meal: 'dinner',
      locked: true,
      opened: [
        { code: 'NOT-HERE', pouches: 2 },
        { code: 'LENT-01', pouches: 1, why: 'as chosen' },
      ],
    },
  ],
});

it('keeps everything that is in the file, the menu with lots that this shelf lacks too', async () => {
  const app = await openTestApp();
  await app.shelf.addLot(madeUpLot());
  const opened = await openTripFile(app, await file(TRIP));
  if (!('value' in opened)) expect.fail(JSON.stringify(opened));
  const { stored, stock, plan } = await planStoredTrip(app, opened.value.stored.id);
  expect(stored.trip).toEqual(TRIP);
  expect(lotsLacking(stored.trip, stock)).toEqual(['NOT-HERE']);
  expect(plan.notices.filter(({ lot }) => lot === 'NOT-HERE')).toHaveLength(1);
});

it('plans a trip that lists no meal', async () => {
  const app = await openTestApp();
  await app.shelf.addLot(madeUpLot({ allergens: [] }));
  const opened = await openTripFile(app, await file({ ...TRIP, menu: [] }));
  if (!('value' in opened)) expect.fail(JSON.stringify(opened));
  expect(opened.value.stored.trip.menu.some((meal) => meal.opened.length > 0)).toBe(true);
  expect(listedMeal(opened.value.stored.trip, { day: 1, meal: 'dinner', group: '1' })).toBeDefined();
});

it.each([
  ['an empty file', '', 'the file is empty; a JSON object is needed'],
  ['a file that ends too soon', '{"name": ', /^this is no valid JSON: .*line 1/],
])('says why %s is none', async (_, text, fault) => {
  expect(await openTripFile(await openTestApp(), await file(text))).toEqual({
    fault: typeof fault === 'string' ? fault : expect.stringMatching(fault),
  });
});

it('names every field that is wrong, and stores nothing', async () => {
  const app = await openTestApp();
  const read = await openTripFile(
    app,
    await file({ ...TRIP, dayCount: 400, party: [{ name: '' }], colour: 'red' }),
  );
  expect(read).toEqual({
    problems: expect.arrayContaining([
      expect.objectContaining({ field: 'dayCount' }),
      expect.objectContaining({ field: 'party[0].name' }),
      { field: '(input)', message: expect.stringContaining('unknown field "colour"') },
    ]),
  });
  expect(await app.trips.listTrips()).toEqual([]);
});

it.each(['__proto__', 'constructor', 'prototype'])('takes no field called %s, at any depth', async (name) => {
  const app = await openTestApp();
  const text = JSON.stringify({
    ...TRIP,
    party: [{ name: 'Ada', slot: { polluted: true } }],
    slot: { polluted: true },
  });
  const read = await openTripFile(app, await file(text.replaceAll('"slot"', JSON.stringify(name))));
  expect(read).toEqual({
    problems: ['party[0]', '(input)'].map((field) => ({
      field,
      message: expect.stringContaining(`unknown field "${name}"`),
    })),
  });
  expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
});

it('takes no file that is larger than a trip can be', async () => {
  const app = await openTestApp();
  await expectUserError(
    openTripFile(app, await file(' '.repeat(LARGEST_TRIP_FILE_BYTES + 1))),
    'TooLarge',
    'larger than 1 MB',
  );
});
