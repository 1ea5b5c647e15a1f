import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { shelfCsv } from '$lib/shelf-csv/write-shelf-csv.ts';
import type { App } from '$lib/server/app.ts';
import type { ImportProgress } from '$lib/server/import-repository.ts';
import { expectUserError, madeUpLot, openTestApp, temporaryFolder } from '$lib/server/test-data.ts';
import { describe, expect, it, vi } from 'vitest';
import { importUpload, readUpload, shownProgress } from './import-work.ts';
import { openUpload, takeUpload } from './uploads.ts';

const LOTS = 3000;
const lots = Array.from({ length: LOTS }, (_, n) => madeUpLot({ code: `L${n}`, pouches: 2 }));

async function uploaded(): Promise<{ app: App; id: string; folder: string }> {
  const folder = await temporaryFolder();
  const app = await openTestApp(folder);
  const csv = [...shelfCsv(lots, 'EUR')].join('');
  const address = await takeUpload(app, 'large.csv', new Blob([csv]).stream());
  return { app, id: address.split('/').at(-1)!, folder: join(folder, 'imports') };
}

/** The fingerprint of what an import would do now. */
async function seenOf(app: App, id: string): Promise<string> {
  const read = await readUpload(app, await openUpload(app, id), { show: 'all', from: 0, size: 0 }, 'look');
  if (read === 'stopped') throw new Error('was stopped');
  return read.seen;
}

/** Waits until the work of a key has come to a phase, with something done in it. */
const reached = (app: App, key: string, phase: ImportProgress['phase']) =>
  vi.waitUntil(
    () => {
      const running = app.imports.work.running(key);
      return running?.phase === phase && running.rows > 0 && running;
    },
    { interval: 0, timeout: 20_000 },
  );

describe('a long import', () => {
  it('tells how far it is, and others read what was before until all is written', async () => {
    const { app, id, folder } = await uploaded();
    const SEEN = await seenOf(app, id);
    const done = importUpload(app, id, SEEN);
    expect(shownProgress(await reached(app, id, 'read')).words).toMatch(
      /^Reading: [\d,]+ rows so far, \d+% of the file\.$/,
    );
    const writing = await reached(app, id, 'write');
    expect(writing).toMatchObject({ of: LOTS });
    expect(shownProgress(writing).words).toMatch(/^Writing: [\d,]+ of 3,000 pouch lots\.$/);
    expect(await app.shelf.listLots()).toEqual([]);
    expect(app.imports.work.running(id)?.phase).toBe('write');

    expect(await done).toBe('done');
    expect(await app.shelf.listLots()).toHaveLength(LOTS);
    expect(await app.imports.upload(id)).toBeUndefined();
    expect(await readdir(folder)).toEqual([]);
  });

  it.each(['read', 'write'] as const)(
    'stopped at its %s phase writes nothing, and starts again from the same file',
    async (phase) => {
      const { app, id } = await uploaded();
      const SEEN = await seenOf(app, id);
      const stopped = importUpload(app, id, SEEN);
      await reached(app, id, phase);
      expect(app.imports.work.stop(id)).toBe(true);
      expect(await stopped).toBe('stopped');
      expect(await app.shelf.listLots()).toEqual([]);
      expect(await openUpload(app, id)).toMatchObject({ upload: { fileName: 'large.csv' }, settled: true });

      expect(await importUpload(app, id, SEEN)).toBe('done');
      expect(await app.shelf.listLots()).toHaveLength(LOTS);
    },
  );

  it('asked for twice is done once, at the same time and afterwards', async () => {
    const { app, id } = await uploaded();
    const SEEN = await seenOf(app, id);
    const upload = (await app.imports.upload(id))!;
    expect(await Promise.all([importUpload(app, id, SEEN), importUpload(app, id, SEEN)])).toEqual([
      'done',
      'done',
    ]);
    await app.shelf.discardPouches('L0', 1, '');
    await expectUserError(importUpload(app, id, SEEN), 'NotFound', 'imported or discarded');
    // Another program that had read the file before it was imported.
    const unwatched = { signal: new AbortController().signal, progress: () => undefined };
    await expectUserError(app.imports.importUpload(upload, lots, unwatched), 'NotFound');
    expect(await app.shelf.getLot('L0')).toMatchObject({ onShelf: 1 });
    expect(await app.shelf.history('L1')).toHaveLength(1);
  });

  it('writes nothing where the shelf is another than what was seen', async () => {
    const { app, id } = await uploaded();
    const SEEN = await seenOf(app, id);
    await app.shelf.addLot(lots[0]!);
    await expectUserError(importUpload(app, id, SEEN), 'StaleVersion', 'shelf changed');
    expect(await app.shelf.listLots()).toHaveLength(1);
    expect(await app.imports.upload(id)).toBeDefined();
  });

  it('writes nothing where a lot would change otherwise than was seen, though as many would', async () => {
    const { app, id } = await uploaded();
    await app.shelf.addLot(madeUpLot({ code: 'L0', pouches: 9 }));
    const SEEN = await seenOf(app, id);
    await app.shelf.discardPouches('L0', 1, '');
    await expectUserError(importUpload(app, id, SEEN), 'StaleVersion', 'shelf changed');
  });

  it('is waited for where it is cancelled', async () => {
    const { app, id } = await uploaded();
    const SEEN = await seenOf(app, id);
    const stopped = importUpload(app, id, SEEN);
    await reached(app, id, 'read');
    await app.imports.work.end(id);
    expect(app.imports.work.running(id)).toBeUndefined();
    expect(await stopped).toBe('stopped');
  });
});

it('the reading for a preview can be stopped, under its own key alone', async () => {
  const { app, id } = await uploaded();
  const opened = await openUpload(app, id);
  const read = (key: string) => readUpload(app, opened, { show: 'all', from: 0, size: 1 }, key);
  const stopped = read('first');
  const running = await reached(app, 'first', 'read');
  expect(shownProgress(running).done).toBeGreaterThan(0);
  expect(shownProgress(running).done).toBeLessThan(1);
  app.imports.work.stop('first');
  expect(await stopped).toBe('stopped');
  expect(await read('second')).toMatchObject({ counts: { all: LOTS, new: LOTS } });
});

it('keeps the rows of an upload once they are read, and what is put right in them', async () => {
  const app = await openTestApp(await temporaryFolder());
  const csv = 'Dish,Bags,Bag (g),Serves\nStew,four hundred,240,2\nSoup,4,nothing,1\nTea,?,9,1\n';
  const address = await takeUpload(app, 'few.csv', new Blob([csv]).stream());
  const id = address.split('/').at(-1)!;
  const statuses = async () => {
    const read = await readUpload(app, await openUpload(app, id), { show: 'all', from: 0, size: 9 }, 'look');
    return read === 'stopped' ? [] : read.rows.map(({ row, fate }) => [row, fate]);
  };
  expect(await statuses()).toEqual([
    [2, 'question'],
    [3, 'question'],
    [4, 'question'],
  ]);
  await app.imports.repair(id, {
    cells: { '2:1': '5' },
    everywhere: [{ column: 2, from: 'nothing', to: '70' }],
    leftOut: [4],
  });
  expect(await statuses()).toEqual([
    [2, 'new'],
    [3, 'new'],
  ]);
});
