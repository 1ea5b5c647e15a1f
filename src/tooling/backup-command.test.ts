import { readFile, readdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterEach, expect, test, vi } from 'vitest';
import {
  fillEveryTable,
  madeUpLot,
  onEachDatabase,
  openTestApp,
  temporaryFolder,
} from '../lib/server/test-data.ts';
import { backupCommand, restoreCommand } from './backup-command.ts';

afterEach(() => vi.unstubAllEnvs());

onEachDatabase(({ openTestApp, place }) => {
  test('what was copied is put back once it is said so, and what was there can be put back too', async () => {
    const folder = await temporaryFolder();
    const [, url] = await place(folder);
    vi.stubEnv('RIDGELARDER_DATA', folder);
    vi.stubEnv('DATABASE_URL', url ?? '');
    const app = await openTestApp(folder);
    await fillEveryTable(app, 20);
    for (const kind of ['sqlite', 'json']) {
      const to = join(await temporaryFolder(), `all.${kind}`);
      expect(await backupCommand(['--to', to])).toEqual({
        exitCode: 0,
        output: `Copied to ${to}\n`,
        errors: '',
      });
      await app.shelf.addLot(madeUpLot({ code: `NEW-${kind}` }));

      const shown = await restoreCommand(['--from', to]);
      expect(shown).toMatchObject({ exitCode: 0, errors: '' });
      expect(shown.output).toMatch(/^lots +22 +21 +1 +0 +0$/m);
      expect(shown.output).toContain(`only now, lots: NEW-${kind}`);
      expect(shown.output).toContain('Nothing was changed');
      expect(await app.shelf.listLots()).toHaveLength(22);

      const done = await restoreCommand(['--from', to, '--yes']);
      expect(done.output).toContain('Done. What was there before is in ');
      expect(await app.shelf.listLots()).toHaveLength(21);
      const before = /before is in (.+)/.exec(done.output)![1]!;
      await restoreCommand(['--from', before, '--yes']);
      expect(await app.shelf.listLots()).toHaveLength(22);
      await restoreCommand(['--from', to, '--yes']);
    }
    const { output } = await backupCommand([]);
    expect(output).toContain(join(folder, 'backups'));
  });
});

test.each([
  ['its beginning', 0, 5000],
  ['its middle', 30_000, 90_000],
])(
  'a database that is damaged in %s is moved aside where that is asked for, and the last copy goes on in its place',
  async (_, start, end) => {
    const folder = await temporaryFolder();
    vi.stubEnv('RIDGELARDER_DATA', folder);
    const app = await openTestApp(folder);
    await fillEveryTable(app, 20);
    const copy = await app.backups.make('by-hand');
    await app.close();
    const file = join(folder, 'ridgelarder.sqlite');
    const damaged = await readFile(file);
    damaged.fill('x', start, end);
    await writeFile(file, damaged);

    const from = join(folder, 'backups', copy.name);
    const refused = await restoreCommand(['--from', from, '--yes']);
    expect(refused).toMatchObject({ exitCode: 2, output: '' });
    expect(refused.errors).toContain('--move-damaged');
    expect((await readFile(file)).equals(damaged)).toBe(true);

    expect(await restoreCommand(['--from', from, '--yes', '--move-damaged'])).toMatchObject({ exitCode: 0 });
    const aside = (await readdir(folder)).find((name) => name.includes('damaged'))!;
    expect((await readFile(join(folder, aside))).equals(damaged)).toBe(true);
    expect(await (await openTestApp(folder)).shelf.listLots()).toHaveLength(21);
  },
);

test('what cannot be done is told, and changes nothing', async () => {
  const folder = await temporaryFolder();
  vi.stubEnv('RIDGELARDER_DATA', folder);
  const taken = join(folder, 'taken.json');
  await writeFile(taken, '{}');
  expect((await backupCommand(['--to', taken])).errors).toContain('is there already');
  expect((await backupCommand(['--to', join(folder, 'all.zip')])).errors).toContain('See --help');
  expect((await backupCommand(['--to', join(folder, 'no', 'all.json')])).errors).toContain(
    join(folder, 'no'),
  );
  expect((await restoreCommand([])).errors).toContain('--from');
  expect((await restoreCommand(['--from', join(folder, 'none.sqlite')])).errors).toContain(
    'There is no file',
  );
  expect((await restoreCommand(['--from', taken])).errors).toContain('taken.json');
  expect(await readFile(taken, 'utf8')).toBe('{}');
  for (const command of [backupCommand, restoreCommand])
    expect((await command(['--help'])).output).toContain('npm run --silent');
});
