import { expect, it } from 'vitest';
import type { App } from './app.ts';
import { planStoredTrip } from './plan-stored-trip.ts';
import { expectUserError, madeUpLot, madeUpTrip, onEachDatabase } from './test-data.ts';
import { withdrawSuspectLot } from './withdraw-suspect-lot.ts';

const MOULD = 'mould in one pouch';

/** Three trips with the suspect lot in their menus: one open, one set aside, one packed and half eaten. */
async function threeTrips(app: App) {
  await app.shelf.addLot(madeUpLot({ code: 'BAD', recipe: 'Bean stew', pouches: 20, servingsPerPouch: 1 }));
  await app.shelf.addLot(madeUpLot({ code: 'GOOD', recipe: 'Rice pot', pouches: 20, servingsPerPouch: 1 }));
  const dinner = (day: number) => ({ day, meal: 'dinner' as const, opened: [{ code: 'BAD', pouches: 1 }] });
  const trip = (name: string) => madeUpTrip({ name, menu: [dinner(1), dinner(2)] });
  const open = await app.trips.createTrip(trip('Open'));
  const aside = await app.trips.createTrip(trip('Aside'));
  await app.trips.setAside(aside.id, 1, [{ code: 'BAD', pouches: 2 }]);
  const packed = await app.trips.createTrip(trip('Packed'));
  await app.trips.setAside(packed.id, 1, [
    { code: 'BAD', pouches: 2 },
    { code: 'GOOD', pouches: 1 },
  ]);
  await app.trips.pack(packed.id, 2);
  await app.trailNotes.enter(packed.id, [
    { id: 'n1', at: '2026-07-04T18:30:00Z', kind: 'eaten', code: 'BAD', pouches: 1, text: '' },
  ]);
  await app.trips.createTrip(madeUpTrip({ name: 'Without it' }));
  return { open: open.id, aside: aside.id, packed: packed.id };
}

const codesOf = async (app: App, id: string) =>
  (await planStoredTrip(app, id)).plan.menu.meals.flatMap(({ opened }) => opened.map(({ code }) => code));

onEachDatabase(({ openTestApp }) => {
  it('takes a lot off the shelf and out of every trip, and plans their meals again', async () => {
    const app = await openTestApp();
    const trips = await threeTrips(app);
    const entries = await app.shelf.history('BAD');
    await withdrawSuspectLot(app, 'BAD', MOULD);

    const lot = await app.shelf.getLot('BAD');
    expect(lot).toMatchObject({ withdrawn: MOULD, pouches: 0, onShelf: 0, setAside: 0, packed: 0 });
    const history = await app.shelf.history('BAD');
    expect(history.slice(-entries.length)).toEqual(entries);
    expect(history[0]).toMatchObject({ kind: 'withdrawn', pouches: 19, note: MOULD });

    for (const id of [trips.open, trips.aside]) {
      const { stored, plan } = await planStoredTrip(app, id);
      expect(stored.reserved).toEqual([]);
      expect(stored.trip.menu.flatMap(({ opened }) => opened.map(({ code }) => code))).not.toContain('BAD');
      expect(new Set(await codesOf(app, id))).toEqual(new Set(['GOOD']));
      expect(plan.notices).toContainEqual(
        expect.objectContaining({ code: 'lot-withdrawn', severity: 'warning', lot: 'BAD' }),
      );
      expect(plan.card.withdrawn).toEqual([{ code: 'BAD', recipe: 'Bean stew', reason: MOULD }]);
    }
    expect((await app.trips.tripsWithout('BAD')).map(({ trip }) => trip.name).sort()).toEqual([
      'Aside',
      'Open',
      'Packed',
    ]);
    await expectUserError(withdrawSuspectLot(app, 'BAD', 'again'), 'Refused', 'withdrawn already');
  });

  it('leaves a trip on its way what it has eaten, and warns of the rest', async () => {
    const app = await openTestApp();
    const { packed } = await threeTrips(app);
    await withdrawSuspectLot(app, 'BAD', MOULD);
    const { stored, plan } = await planStoredTrip(app, packed);
    expect(stored).toMatchObject({ stage: 'packed', eaten: [{ code: 'BAD', pouches: 1 }] });
    expect(stored.reserved).toEqual([{ code: 'GOOD', pouches: 1 }]);
    const eatenOn = plan.menu.meals.filter(({ opened }) => opened.some(({ code }) => code === 'BAD'));
    expect(eatenOn.map(({ day }) => day)).toEqual([1]);
    expect(plan.card.withdrawn).toHaveLength(1);
  });

  it('lets nobody set it aside, count it or bring it back by an import or a form', async () => {
    const app = await openTestApp();
    const { open } = await threeTrips(app);
    await withdrawSuspectLot(app, 'BAD', MOULD);
    const { stored } = await planStoredTrip(app, open);
    await expectUserError(
      app.trips.setAside(open, stored.version, [{ code: 'BAD', pouches: 1 }]),
      'Refused',
      'BAD',
    );
    await expectUserError(app.shelf.countLot('BAD', 3, ''), 'Refused', 'is withdrawn');
    await app.shelf.importLots([madeUpLot({ code: 'BAD', pouches: 5 })], 'table');
    const lot = (await app.shelf.getLot('BAD'))!;
    expect(lot.withdrawn).toBe(MOULD);
    const { version, onShelf: _on, setAside: _aside, packed: _packed, withdrawn: _, ...said } = lot;
    await app.shelf.updateLot('BAD', { ...said, note: 'looked at it' }, version);
    expect(await app.shelf.getLot('BAD')).toMatchObject({ withdrawn: MOULD, note: 'looked at it' });
    expect(await codesOf(app, open)).not.toContain('BAD');
  });

  it('can be put back from the bin, with the pouches that left the shelf', async () => {
    const app = await openTestApp();
    const { aside } = await threeTrips(app);
    await withdrawSuspectLot(app, 'BAD', MOULD);
    const binId = await app.bin.ofLot('BAD');
    expect(await app.bin.list()).toMatchObject([{ id: binId, kind: 'lot', name: 'BAD Bean stew' }]);
    expect(await app.bin.putBack(binId!)).toEqual({ kind: 'lot', recordId: 'BAD' });
    const lot = await app.shelf.getLot('BAD');
    expect(lot).toMatchObject({ onShelf: 19 });
    expect(lot).not.toHaveProperty('withdrawn');
    expect(await app.trips.tripsWithout('BAD')).toEqual([]);
    expect((await planStoredTrip(app, aside)).plan.card.withdrawn).toEqual([]);
    await expectUserError(app.bin.putBack(binId!), 'NotFound');

    await withdrawSuspectLot(app, 'BAD', 'now really');
    expect(await app.bin.ofLot('BAD')).toBeDefined();
    await app.bin.putBack((await app.bin.ofLot('BAD'))!);
    expect(await app.shelf.getLot('BAD')).toMatchObject({ onShelf: 19 });
  });
});
