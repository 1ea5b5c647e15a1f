import { expect, test } from 'vitest';
import { projectFile, startApp } from './harness.ts';
import { readFileSync } from 'node:fs';

const app = startApp();

test('the address answers, under its own name only', async () => {
  const page = await app.open('/');
  expect(await page.title()).toBe('Ridgelarder');

  const { port } = new URL(app.origin);
  const other = await fetch(`http://localhost:${port}/shelf`, { redirect: 'manual' });
  expect(other.status).toBe(307);
  expect(other.headers.get('location')).toBe(`${app.origin}/shelf`);
});

test('a form posted from another site is refused', async () => {
  const response = await fetch(`${app.origin}/demo`, {
    method: 'POST',
    headers: { 'content-type': 'application/x-www-form-urlencoded', origin: 'http://elsewhere.example' },
  });
  expect(response.status).toBe(403);
});

test('plans over HTTP', async () => {
  const trip = JSON.parse(readFileSync(projectFile('demo-data/trip.json'), 'utf8'));
  const post = (body: unknown) =>
    fetch(`${app.origin}/api/plan`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
    });
  const good = await post({ trip });
  expect(good.status).toBe(200);
  expect(await good.json()).toMatchObject({ tripName: trip.name, totals: { pouches: 0 } });

  const bad = await post({ trip: { ...trip, dayCount: 400 } });
  expect(bad.status).toBe(400);
  expect(await bad.json()).toMatchObject({ problems: [{ field: 'trip.dayCount' }] });

  expect((await post({ trip, stock: 'x'.repeat(17_000_000) })).status).toBe(413);
});
