import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Stock } from '$lib/planning/model/pouch-lot';
import { defaultSettings } from '$lib/planning/model/settings';
import type { TripPlan } from '$lib/planning/model/trip-plan';
import { Trip } from '$lib/planning/model/trip';
import { planTrip } from '$lib/planning/plan-trip';
import { wordedPlan } from '$lib/presentation/worded-plan';
import { openApp, type App } from '$lib/server/app';
import { readShelfCsv } from '$lib/shelf-csv/read-shelf-csv';
import { POST } from './+server';

const trip = JSON.parse(readFileSync('demo-data/trip.json', 'utf8'));
const folder = mkdtempSync(join(tmpdir(), 'ridgelarder-api-'));
let app: App;
let stock: Stock;

beforeAll(async () => {
  app = await openApp(folder);
  stock = (
    await readShelfCsv(readFileSync('demo-data/shelf.csv'), {
      currency: 'EUR',
      known: { today: '2026-12-01' },
    })
  ).lots;
});
afterAll(async () => {
  await app.close();
  rmSync(folder, { recursive: true });
});

/** Calls the endpoint as SvelteKit does; a thrown HTTP error becomes its status and message. */
async function post(body: string): Promise<{ status: number; answer: unknown }> {
  const request = new Request('http://127.0.0.1/api/plan', { method: 'POST', body });
  try {
    const response = await POST({ request, locals: { app } } as Parameters<typeof POST>[0]);
    return { status: response.status, answer: await response.json() };
  } catch (thrown) {
    const { status, body: answer } = thrown as { status: number; body: unknown };
    return { status, answer };
  }
}

test('answers with the plan of the trip and the stock that are sent', async () => {
  const expected = planTrip(Trip.parse(trip), stock, defaultSettings());
  const { status, answer } = await post(JSON.stringify({ trip, stock }));
  expect(status).toBe(200);
  expect(answer).toEqual(JSON.parse(JSON.stringify(wordedPlan(expected, 'metric'))));
});

test('takes the shelf and the settings of the app where none are sent', async () => {
  const empty = await post(JSON.stringify({ trip }));
  expect(empty).toMatchObject({ status: 200, answer: { totals: { pouches: 0 } } });

  await app.shelf.importLots(stock, 'demo');
  const { answer } = await post(JSON.stringify({ trip }));
  const sent = await post(JSON.stringify({ trip, stock }));
  expect(answer).toEqual(sent.answer);
});

test('looks for the best menu where a search is asked for', async () => {
  const { menu, totals } = planTrip(Trip.parse(trip), stock, defaultSettings());
  const { status, answer } = await post(JSON.stringify({ trip, stock, search: 'quick' }));
  expect(status).toBe(200);
  const found = answer as TripPlan;
  expect(found.menu.planner).not.toBe(menu.planner);
  expect(found.totals.missingKcal).toBeLessThanOrEqual(totals.missingKcal);
  expect(found.menu.meals.map(({ day, meal }) => [day, meal])).toEqual(
    menu.meals.map(({ day, meal }) => [day, meal]),
  );
});

test.each<[string, unknown, { field: string; code: string; message: RegExp }]>([
  ['no trip', {}, { field: 'trip', code: 'missing', message: /is missing/ }],
  [
    'no days',
    { trip: { ...trip, dayCount: 0, days: [] } },
    { field: 'trip.dayCount', code: 'under', message: /at least 1 day/ },
  ],
  [
    '400 days',
    { trip: { ...trip, dayCount: 400 } },
    { field: 'trip.dayCount', code: 'trip-too-long', message: /at most 90 days/ },
  ],
  [
    'nobody',
    { trip: { ...trip, party: [] } },
    { field: 'trip.party', code: 'no-eater', message: /at least one person/ },
  ],
  [
    'negative calories',
    { trip: { ...trip, energyKcal: -1 } },
    { field: 'trip.energyKcal', code: 'under', message: /at least 500 kcal/ },
  ],
  ['an unknown search', { trip, search: 'deep' }, { field: 'search', code: 'not-one-of', message: /quick/ }],
  [
    'an unknown field',
    { trip, shelf: [] },
    { field: '(input)', code: 'unknown-fields', message: /unknown field "shelf"/ },
  ],
])('refuses %s and names the field', async (_, body, { field, code, message }) => {
  const { status, answer } = await post(JSON.stringify(body));
  expect(status).toBe(400);
  expect(answer).toEqual({
    problems: expect.arrayContaining([
      { field, code, params: expect.anything(), message: expect.stringMatching(message) },
    ]),
  });
});

test('refuses a lot that cannot be true', async () => {
  const { status, answer } = await post(
    JSON.stringify({ trip, stock: [stock[0], { ...stock[1], energyKcal: 5000 }] }),
  );
  expect(status).toBe(400);
  expect(answer).toEqual({
    problems: [
      {
        field: 'stock[1].energyKcal',
        code: 'lot-richer-than-fat',
        params: { kcalPerG: expect.any(Number) },
        message: expect.stringMatching(/more than pure fat/),
      },
    ],
  });
});

test('refuses what is no JSON, saying where the fault is', async () => {
  expect(await post('{"trip": }')).toEqual({
    status: 400,
    answer: {
      problems: [
        {
          field: '(input)',
          code: 'not-json',
          params: { fault: expect.any(String) },
          message: expect.stringMatching(/no valid JSON: .*line 1 column 10/),
        },
      ],
    },
  });
});

test('refuses a body that is too large', async () => {
  const { status, answer } = await post(JSON.stringify({ trip, stock: 'x'.repeat(16_000_000) }));
  expect(status).toBe(413);
  expect(answer).toMatchObject({ message: expect.stringMatching(/larger than 16 MB/) });
});
