import { mkdirSync, mkdtempSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { DATABASE_FILE } from '../lib/server/data-folder.ts';
import { selfCheck } from './self-check.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'ridgelarder-check-'));
});
afterEach(() => {
  vi.unstubAllEnvs();
  rmSync(folder, { recursive: true, force: true });
});

const database = () => path.join(folder, DATABASE_FILE);
const fill = () => {
  const made = new DatabaseSync(database());
  made.exec(
    "create table t (a text); insert into t with recursive n(i) as (select 1 union all select i + 1 from n where i < 5000) select hex(i) || 'x' from n; create index t_a on t (a)",
  );
  made.close();
};

it('lets a new folder and a whole database pass, and leaves it open for others', () => {
  expect(selfCheck(path.join(folder, 'new', 'data'))).toBeUndefined();
  fill();
  const other = new DatabaseSync(database());
  other.exec('begin immediate');
  expect(selfCheck(folder)).toBeUndefined();
  other.close();
});

it('names a database that is damaged, cut off or none, and what to do', () => {
  fill();
  truncateSync(database(), 40_000);
  expect(selfCheck(folder)).toMatch(
    /ridgelarder\.sqlite" is damaged \(.+\), and was left as it is.*npm run restore/,
  );
  writeFileSync(database(), 'These are letters, and no database at all.'.repeat(200));
  expect(selfCheck(folder)).toMatch(/damaged \(file is not a database\)/);
});

it('does not begin empty where there are copies, and names the newest', () => {
  const copies = path.join(folder, 'backups');
  mkdirSync(copies);
  const newest = path.join(copies, '20261125T194146123Z-daily.sqlite');
  for (const name of [
    newest,
    path.join(copies, '20261025T194146123Z-by-hand.sqlite'),
    path.join(copies, 'zzz'),
  ])
    writeFileSync(name, '');
  expect(selfCheck(folder)).toMatch(/is missing, but there are copies/);
  writeFileSync(database(), '');
  expect(selfCheck(folder)).toContain(
    `is empty, but there are copies of it, so nothing was started. Put one back: npm run restore -- --from "${newest}" --yes`,
  );
  vi.stubEnv('DATABASE_URL', 'postgres://localhost/larder');
  expect(selfCheck(folder)).toBeUndefined();
  vi.unstubAllEnvs();
  rmSync(database());
  fill();
  expect(selfCheck(folder)).toBeUndefined();
});

it('names a folder that cannot be used', () => {
  writeFileSync(path.join(folder, 'file'), '');
  expect(selfCheck(path.join(folder, 'file', 'data'))).toMatch(
    /data" cannot be written to \(ENOTDIR\).*RIDGELARDER_DATA/,
  );
});

it('names a Node that is too old, and a log that there is not', () => {
  expect(selfCheck(folder, '20.20.2')).toMatch(/This is Node 20\.20\.2; at least 24/);
  vi.stubEnv('RIDGELARDER_LOG', 'loud');
  expect(selfCheck(folder)).toMatch(/RIDGELARDER_LOG is "loud".*off, json, text/);
});
