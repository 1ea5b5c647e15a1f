import { expect, test } from 'vitest';
import { madeUpTrip, onEachDatabase, type TestDatabase } from '../test-data.ts';

const DAY_MS = 86_400_000;

async function clocked({ openTestApp }: TestDatabase) {
  let now = Date.parse('2026-07-01T12:00:00Z');
  const app = await openTestApp(undefined, () => new Date(now));
  return { ...app.access, trips: app.trips, passDays: (days: number) => (now += days * DAY_MS) };
}

onEachDatabase((database) => {
  test('a session is found by its token and passphrase, and ends alone or with all', async () => {
    const { sessions } = await clocked(database);
    const [one, two, three] = [
      await sessions.start('p'),
      await sessions.start('p'),
      await sessions.start('p'),
    ];
    expect(one).toMatch(/^[\w-]{43}$/);
    expect(new Set([one, two, three]).size).toBe(3);
    const found = await sessions.find(one, 'p');
    expect(found?.tokenHash).not.toBe(one);
    expect(await sessions.find(`${one.slice(0, -1)}!`, 'p')).toBeUndefined();
    expect(await sessions.find(found?.tokenHash ?? '', 'p')).toBeUndefined();
    await sessions.end(found?.tokenHash ?? '');
    expect(await sessions.find(one, 'p')).toBeUndefined();
    expect(await sessions.list('p')).toHaveLength(2);
    await sessions.endAll();
    expect(await sessions.find(two, 'p')).toBeUndefined();
    expect(await sessions.find(three, 'p')).toBeUndefined();
  });

  test('another passphrase ends every session', async () => {
    const { sessions } = await clocked(database);
    const token = await sessions.start('before');
    expect(await sessions.find(token, 'after')).toBeUndefined();
    await sessions.start('after');
    expect(await sessions.find(token, 'before')).toBeUndefined();
  });

  test('a session ends two weeks after it was last seen, and after ninety days in any case', async () => {
    const { sessions, passDays } = await clocked(database);
    const idle = await sessions.start('p');
    passDays(14.001);
    expect(await sessions.find(idle, 'p')).toBeUndefined();

    const busy = await sessions.start('p');
    for (let days = 0; days < 84; days += 12) {
      passDays(12);
      expect(await sessions.find(busy, 'p'), `${days}`).toBeDefined();
    }
    passDays(6);
    expect(await sessions.find(busy, 'p')).toBeDefined();
    passDays(0.001);
    expect(await sessions.find(busy, 'p')).toBeUndefined();
  });

  test('a link opens what it was given for until it expires, and stays in the list for a while', async () => {
    const { links, trips, passDays } = await clocked(database);
    const { id } = await trips.createTrip(madeUpTrip());
    const forTrip = await links.give({ forWhom: 'Ada', tripId: id, mayNote: true, days: 5 });
    const forShelf = await links.give({ forWhom: 'Ben', tripId: undefined, mayNote: true, days: 10 });
    expect(await links.find(forTrip)).toMatchObject({
      forWhom: 'Ada',
      tripId: id,
      tripName: 'Three lakes',
      mayNote: true,
    });
    // There is nothing to note of a shelf.
    expect(await links.find(forShelf)).toMatchObject({
      tripId: undefined,
      tripName: undefined,
      mayNote: false,
    });
    expect(await links.find('')).toBeUndefined();
    expect(JSON.stringify(await links.list())).not.toContain(forTrip);

    passDays(4.999);
    expect(await links.find(forTrip)).toBeDefined();
    passDays(0.001);
    expect(await links.find(forTrip)).toBeUndefined();
    expect(await links.find(forShelf)).toBeDefined();
    expect((await links.list()).map(({ forWhom }) => forWhom).sort()).toEqual(['Ada', 'Ben']);
    passDays(31);
    await links.give({ forWhom: 'Cleo', tripId: undefined, mayNote: false, days: 1 });
    expect((await links.list()).map(({ forWhom }) => forWhom)).toEqual(['Cleo', 'Ben']);
  });

  test('a link that was taken back opens nothing', async () => {
    const { links } = await clocked(database);
    const token = await links.give({ forWhom: 'Ada', tripId: undefined, mayNote: false, days: 5 });
    const [link] = await links.list();
    await links.revoke(link?.id ?? '');
    expect(await links.find(token)).toBeUndefined();
    expect(await links.list()).toEqual([]);
  });
});
