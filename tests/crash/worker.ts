/*
 * A process that changes a data folder until it is killed. It says on standard output what it begins, and what is acknowledged, each in a line of JSON
 * that is written before it goes on.
 */
import { randomUUID } from 'node:crypto';
import { writeSync } from 'node:fs';
import { setImmediate } from 'node:timers/promises';
import { Afterwards } from '../../src/lib/planning/model/afterwards.ts';
import { randomFrom, type Random } from '../../src/lib/planning/optimiser/random.ts';
import { AfterwardsRepository } from '../../src/lib/server/afterwards-repository.ts';
import { Backups } from '../../src/lib/server/backups/backups.ts';
import { openDatabase, type Database } from '../../src/lib/server/database/open-database.ts';
import { ImportRepository } from '../../src/lib/server/import-repository.ts';
import { KitchenRepository } from '../../src/lib/server/kitchen-repository.ts';
import { ShelfRepository } from '../../src/lib/server/shelf-repository.ts';
import { TrailNoteRepository } from '../../src/lib/server/trail-note-repository.ts';
import { TripRepository } from '../../src/lib/server/trip-repository.ts';
import { exampleLot, exampleTrip } from '../support/examples.ts';
import { exampleBatch } from '../support/kitchen-examples.ts';
import { NEW, type Said, type Task } from './protocol.ts';
import {
  add,
  afterBringingBack,
  afterReopening,
  NEW_TRIP,
  said as asText,
  stageOf,
  total,
  type TripModel,
} from './trip-model.ts';

const now = () => new Date().toISOString();
const say = (what: Said) => writeSync(1, `${JSON.stringify(what)}\n`);

/** Says that something begins, does it, and says that it is acknowledged. */
async function acknowledged<Result>(
  key: string,
  expected: string,
  work: () => Promise<Result>,
): Promise<Result> {
  say({ begun: key, expected });
  const result = await work();
  say({ done: key });
  await setImmediate();
  return result;
}

const task = JSON.parse(process.argv[2] ?? '') as Task;
const random = randomFrom(task.seed);
const upTo = (most: number, from: Random = random) => Math.floor(from() * (most + 1));

say({ opening: true });
const db = await openDatabase(task.folder);
say({ ready: true });
const WORK: Readonly<Record<Task['kind'], () => Promise<unknown>>> = {
  update: async () => undefined,
  change: () => Promise.all([importLots(db), sealBatches(db), walkTrips(db)]),
  copy: () => Promise.all([remember(db), copyAgainAndAgain()]),
  restore: putBackAgainAndAgain,
};
await WORK[task.kind]();
await db.destroy();

/** Lists that take several parts each. */
async function importLots(on: Database): Promise<never> {
  const shelf = new ShelfRepository(on, now);
  for (let n = 0; ; n += 1) {
    const name = `I${task.name}-${n}-`;
    const lots = Array.from({ length: 201 + upTo(250) }, (_, index) =>
      exampleLot({ code: `${name}${index}`, pouches: 1 + (index % 5) }),
    );
    const pouches = lots.reduce((sum, lot) => sum + lot.pouches, 0);
    await acknowledged(`lots ${name}`, `${lots.length} ${pouches}`, () => shelf.importLots(lots, name));
  }
}

async function sealBatches(on: Database): Promise<never> {
  const { batches, ...kitchen } = withSealing(on);
  for (let n = 0; ; n += 1) {
    const code = `B${task.name}-${n}`;
    const batch = await acknowledged(`batch ${code}`, 'open 0', () => batches.create(exampleBatch({ code })));
    const lots = Array.from({ length: 1 + upTo(3) }, (_, index) => exampleLot({ code: `${code}-${index}` }));
    await acknowledged(`batch ${code}`, `sealed ${lots.length}`, () => kitchen.seal(batch, lots));
  }
}

function withSealing(on: Database) {
  const kitchen = new KitchenRepository(on, now);
  return {
    batches: kitchen.batches,
    seal: (
      ...[batch, lots]: [Parameters<typeof kitchen.sealBatch>[0], Parameters<typeof kitchen.sealBatch>[1]]
    ) => kitchen.sealBatch(batch, lots, '2026-09-20'),
  };
}

/** Trips that go through all their stages, on lots of their own. */
async function walkTrips(on: Database): Promise<never> {
  const shelf = new ShelfRepository(on, now);
  const trips = new TripRepository(on, now);
  const afterwards = new AfterwardsRepository(on, trips);
  const notes = new TrailNoteRepository(on, now);
  const own = randomFrom(task.seed + 1);
  const some = (most: number) => upTo(most, own);
  const codes = [0, 1, 2].map((n) => `T${task.name}-${n}`);
  for (const code of codes)
    await acknowledged(`stock ${code}`, '60', () => shelf.addLot(exampleLot({ code, pouches: 60 })));
  let free: Readonly<Record<string, number>> = Object.fromEntries(codes.map((code) => [code, 60]));
  const pick = (most: Readonly<Record<string, number>>) =>
    add(
      {},
      Object.fromEntries(Object.entries(most).map(([code, pouches]) => [code, some(Math.min(pouches, 5))])),
    );
  const lines = (pouches: Readonly<Record<string, number>>) =>
    Object.entries(pouches).map(([code, count]) => ({ code, pouches: count }));

  for (;;) {
    say({ begun: NEW, expected: asText(NEW_TRIP) });
    const created = await trips.createTrip(exampleTrip({ name: task.name }));
    const { id } = created;
    let { version } = created;
    let trip: TripModel = NEW_TRIP;
    const to = async (next: TripModel, work: () => Promise<unknown>) => {
      await acknowledged(`trip ${id}`, asText(next), work);
      version += 1;
      const held = ({ aside, packed, eaten }: TripModel) => add(add(aside, packed), eaten);
      free = add(add(free, held(trip)), held(next), -1);
      trip = next;
    };
    say({ done: `trip ${id}`, of: NEW, expected: asText(trip) });
    for (let steps = 6 + some(10); steps > 0; steps -= 1) {
      const stage = stageOf(trip);
      if (stage === 'open' || (stage === 'set aside' && some(2) === 0)) {
        const aside = pick(add(free, trip.aside));
        if (stage === 'open' && total(aside) === 0) continue;
        await to({ ...trip, aside }, () => trips.setAside(id, version, lines(aside)));
      } else if (stage === 'set aside') {
        if (some(3) === 0) await to({ ...trip, aside: {} }, () => trips.release(id, version));
        else await to({ ...trip, aside: {}, packed: trip.aside }, () => trips.pack(id, version));
      } else if (stage === 'packed' && total(trip.packed) > 0 && some(2) > 0) {
        const eaten = pick(trip.packed);
        const back = pick(add(trip.packed, eaten, -1));
        if (total(eaten) + total(back) === 0) continue;
        const noted = [
          ...lines(eaten).map((line) => ({ ...line, kind: 'eaten' as const })),
          ...lines(back).map((line) => ({ ...line, kind: 'brought home' as const })),
        ];
        const next = {
          ...trip,
          packed: add(add(trip.packed, eaten, -1), back, -1),
          eaten: add(trip.eaten, eaten),
          noted: add(trip.noted, eaten),
          back: add(trip.back, back),
        };
        const all = noted.map((note) => ({ ...note, id: randomUUID(), at: now(), text: '' }));
        await to(next, () => notes.enter(id, all));
      } else if (stage === 'packed') {
        const brought = pick(trip.packed);
        await to(afterBringingBack(trip, brought), () =>
          afterwards.finish({ id, version }, lines(brought), Afterwards.parse({}), [], {
            water: new Map(),
            portion: new Map(),
          }),
        );
      } else await to(afterReopening(trip), () => afterwards.reopen(id, version));
    }
  }
}

/** Small changes, one after the other. */
async function remember(on: Database): Promise<never> {
  const imports = new ImportRepository(on, `${task.folder}/imports`, () => new Date());
  for (let n = 0; ; n += 1) {
    const name = `${task.name}-${n}`;
    await acknowledged(`mapping ${name}`, 'there', () => imports.rememberMapping(name, { n }));
  }
}

async function copyAgainAndAgain(): Promise<never> {
  const backups = new Backups(db, task.folder, () => new Date());
  for (;;) {
    say({ begun: 'copy' });
    const { name } = await backups.make('by-hand');
    say({ copied: name });
  }
}

async function putBackAgainAndAgain(): Promise<never> {
  const backups = new Backups(db, task.folder, () => new Date());
  for (;;)
    for (const name of task.copies ?? []) await acknowledged('data', name, () => backups.restore(name));
}
