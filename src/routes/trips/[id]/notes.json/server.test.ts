import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { Trip } from '$lib/planning/model/trip';
import { openApp, type App } from '$lib/server/app';
import { GET, POST } from './+server';

const folder = mkdtempSync(join(tmpdir(), 'ridgelarder-notes-'));
const HOME = 'http://127.0.0.1:4810';
const NOTE = {
  id: '5f0c6a52-2f3e-4f4e-9a52-7a0f6a0e1c11',
  at: '2026-07-05T18:30:00+02:00',
  kind: 'eaten',
  code: 'A',
  pouches: 1,
};
let app: App;
let id: string;

beforeAll(async () => {
  app = await openApp(folder);
  const party = [{ name: 'Ada' }];
  id = (await app.trips.createTrip(Trip.parse({ name: 'T', startDate: '2026-07-04', dayCount: 2, party })))
    .id;
});
afterAll(async () => {
  await app.close();
  rmSync(folder, { recursive: true });
});

/** Calls the endpoint as SvelteKit does; a thrown HTTP error becomes its status and message. */
async function call(method: 'GET' | 'POST', body?: unknown, headers: HeadersInit = {}, tripId = id) {
  const url = new URL(`${HOME}/trips/${tripId}/notes.json`);
  const text = typeof body === 'string' ? body : JSON.stringify(body);
  const request = new Request(url, { method, headers, ...(body !== undefined && { body: text }) });
  const event = { request, url, locals: { app }, params: { id: tripId } };
  try {
    const response = await (method === 'GET' ? GET : POST)(event as never);
    return { status: response.status, answer: await response.json() };
  } catch (thrown) {
    const { status, body: answer } = thrown as { status: number; body: unknown };
    return { status, answer };
  }
}

test('answers each note in order, a second time as known, and lists what was kept', async () => {
  const other = { ...NOTE, id: '0b6f7f9c-8b0e-4a53-8f40-2d8f7a3a6c22' };
  const first = await call('POST', { notes: [NOTE, other] }, { origin: HOME });
  expect(first).toMatchObject({
    status: 200,
    answer: {
      results: [
        { id: NOTE.id, outcome: 'conflict', message: expect.stringContaining('"A"') },
        { id: other.id, outcome: 'conflict' },
      ],
    },
  });
  expect((await call('POST', { notes: [other] })).answer).toEqual({
    results: [{ id: other.id, outcome: 'known' }],
  });
  const { answer } = await call('GET');
  expect(answer).toMatchObject({ notes: [{ ...NOTE, text: '', outcome: 'conflict' }, { id: other.id }] });
});

test('a page of another address is refused', async () => {
  for (const origin of ['http://elsewhere.example', 'null', 'http://127.0.0.1:4811'])
    expect(await call('POST', { notes: [] }, { origin })).toMatchObject({ status: 403 });
});

test.each<[string, unknown, string]>([
  ['no JSON', '{"notes": ', '(input)'],
  ['no notes', {}, 'notes'],
  ['an id that is no UUID', { notes: [{ ...NOTE, id: '7' }] }, 'notes[0].id'],
  ['no instant', { notes: [{ ...NOTE, at: 'yesterday' }] }, 'notes[0].at'],
  ['an unknown kind', { notes: [{ ...NOTE, kind: 'lost' }] }, 'notes[0].kind'],
  ['half a pouch', { notes: [{ ...NOTE, pouches: 0.5 }] }, 'notes[0].pouches'],
  ['none eaten', { notes: [{ ...NOTE, pouches: 0 }] }, 'notes[0].pouches'],
  ['how much was left over', { notes: [{ ...NOTE, kind: 'left over' }] }, 'notes[0].servings'],
  ['too many', { notes: Array.from({ length: 501 }, () => NOTE) }, 'notes'],
])('refuses %s and names the field', async (_, body, field) => {
  const kept = (await app.trailNotes.list(id)).length;
  expect(await call('POST', body)).toMatchObject({ status: 400, answer: { problems: [{ field }] } });
  expect(await app.trailNotes.list(id)).toHaveLength(kept);
});

test('there never was such a trip', async () => {
  expect(await call('POST', { notes: [NOTE] }, {}, 'none')).toMatchObject({ status: 404 });
  expect(await call('GET', undefined, {}, 'none')).toMatchObject({ status: 404 });
});
