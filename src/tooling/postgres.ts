import { execFile, spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, globSync } from 'node:fs';
import { chown, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { createServer, type AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { promisify } from 'node:util';
import pg from 'pg';
import { run } from './run.ts';

/* A PostgreSQL for tests and benchmarks: started here, in a folder of its own, gone afterwards. */

export const USER = 'ridgelarder';
/** PostgreSQL refuses to run as root; this one may do nothing else. */
const NOBODY = { uid: 65534, gid: 65534 };
const START_TRIES = 200;
const TRY_MS = 50;

/** @returns the folder with the programs of the newest PostgreSQL of this machine; `POSTGRES_BIN` names another one. */
export function findPostgres(): string | undefined {
  const named = process.env['POSTGRES_BIN'];
  const version = (folder: string) => Number(/\/postgresql\/(\d+)\//.exec(folder)?.[1]);
  const packaged = globSync('/usr/lib/postgresql/*/bin').sort((a, b) => version(b) - version(a));
  const places = named ? [named] : [...packaged, ...(process.env['PATH'] ?? '').split(path.delimiter)];
  return places.find(
    (place) => existsSync(path.join(place, 'initdb')) && existsSync(path.join(place, 'postgres')),
  );
}

/** Installs PostgreSQL where there is none, on Debian as root. @returns whether there is one now */
export function ensurePostgres(): boolean {
  if (findPostgres() === undefined && process.getuid?.() === 0 && existsSync('/usr/bin/apt-get')) {
    console.log('Installing PostgreSQL for the tests of the database…');
    run('apt-get update -q && DEBIAN_FRONTEND=noninteractive apt-get install -q -y postgresql');
  }
  return findPostgres() !== undefined;
}

export type PostgresServer = {
  /** Address of a database that is empty; others can be made through it. */
  readonly url: string;
  /** Ends it and removes its data. */
  stop(): Promise<void>;
};

/**
 * Starts a PostgreSQL of its own on a free port of this machine. It sorts as English does, so that what relies on the order of its bytes shows.
 * The user "ridgelarder" needs no password; every other one does.
 *
 * @param bin what `findPostgres` found, 15 or newer
 * @param isDurable whether what is committed must survive a power cut, as a real one's must; without that, tests are quicker
 * @throws Error where it does not start
 */
export async function startPostgres(bin: string, isDurable = false): Promise<PostgresServer> {
  const owner = process.getuid?.() === 0 ? NOBODY : undefined;
  const folder = await mkdtemp(path.join(tmpdir(), 'ridgelarder-postgres-'));
  if (owner) await chown(folder, owner.uid, owner.gid);
  const data = path.join(folder, 'data');
  await promisify(execFile)(
    path.join(bin, 'initdb'),
    [
      ...['--pgdata', data, '--username', USER, '--encoding', 'UTF8', '--no-sync', '--no-instructions'],
      ...['--auth-local', 'trust', '--auth-host', 'scram-sha-256'],
      ...['--no-locale', '--locale-provider', 'icu', '--icu-locale', 'en'],
    ],
    { ...owner, cwd: folder },
  );
  await writeFile(
    path.join(data, 'pg_hba.conf'),
    `host all ${USER} 127.0.0.1/32 trust\nhost all all 127.0.0.1/32 scram-sha-256\n`,
  );
  const port = await freePort();
  const quick = ['fsync=off', 'synchronous_commit=off', 'full_page_writes=off'];
  const settings = [
    ...['listen_addresses=127.0.0.1', `port=${port}`, 'unix_socket_directories=', 'max_connections=300'],
    ...(isDurable ? [] : quick),
  ];
  const server = spawn(
    path.join(bin, 'postgres'),
    ['-D', data, ...settings.flatMap((setting) => ['-c', setting])],
    { ...owner, cwd: folder, stdio: ['ignore', 'ignore', 'pipe'] },
  );
  // Where nobody stops it in order, it must not outlive this program.
  const killAtExit = () => void server.kill('SIGQUIT');
  process.once('exit', killAtExit);
  let log = '';
  server.stderr.on('data', (text) => (log = (log + text).slice(-2000)));
  const stop = async () => {
    process.off('exit', killAtExit);
    if (server.exitCode === null) {
      const ended = once(server, 'exit');
      // Ends at once, as its data is not needed again.
      server.kill('SIGQUIT');
      await ended;
    }
    await rm(folder, { recursive: true, force: true });
  };
  const url = `postgres://${USER}@127.0.0.1:${port}/postgres`;
  for (let tried = 0; !(await answers(url)); tried += 1) {
    if (tried < START_TRIES && server.exitCode === null) {
      await sleep(TRY_MS);
      continue;
    }
    await stop();
    throw new Error(`PostgreSQL in ${bin} does not start: ${log}`);
  }
  return { url, stop };
}

async function answers(url: string): Promise<boolean> {
  const client = new pg.Client(url);
  try {
    await client.connect();
    await client.end();
    return true;
  } catch {
    return false;
  }
}

async function freePort(): Promise<number> {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address() as AddressInfo;
  server.close();
  return port;
}
