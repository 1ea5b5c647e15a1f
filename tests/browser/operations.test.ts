/* What whoever runs the program sees of it: its health, its log, how it stops, and what it says when it cannot start. */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { once } from 'node:events';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { afterEach, expect, test } from 'vitest';
import packageJson from '../../package.json' with { type: 'json' };
import { fillDemo, startBuiltApp, type BuiltApp } from '../../src/tooling/built-app.ts';
import { ROOT } from '../../src/tooling/run.ts';

const running: BuiltApp[] = [];
const start = async (environment?: Readonly<Record<string, string>>, again?: BuiltApp) => {
  const app = await startBuiltApp(environment, again);
  running.push(app);
  return app;
};
afterEach(async () => {
  for (const app of running.splice(0)) await app.stop().catch(() => undefined);
});
const database = (app: BuiltApp, ending = '') => path.join(app.dataFolder, `ridgelarder.sqlite${ending}`);
const health = async (app: BuiltApp) => {
  const response = await fetch(`${app.origin}/healthz`);
  const retryAfter = response.headers.get('retry-after');
  return {
    status: response.status,
    ...(retryAfter !== null && { retryAfter }),
    body: (await response.json()) as unknown,
  };
};

test('/healthz tells that the store answers, which version runs and which form its tables have, and nothing else', async () => {
  const app = await start();
  expect(await health(app)).toEqual({
    status: 200,
    body: { status: 'ok', version: packageJson.version, schema: expect.stringMatching(/^\w[\w-]+$/) },
  });
  expect(
    (await fetch(`${app.origin}/healthz`, { method: 'POST', headers: { origin: app.origin } })).status,
  ).toBe(405);
});

test('/healthz is 503 where the store cannot be opened', async () => {
  const app = await start();
  expect(await app.stop(true)).toBe(0);
  const newer = new DatabaseSync(database(app));
  newer.exec("insert into kysely_migration values ('9999-newer', '2099-01-01')");
  newer.close();
  const again = await start({}, running.pop());
  expect(await health(again)).toEqual({
    status: 503,
    retryAfter: '10',
    body: { status: 'no store', version: packageJson.version },
  });
  expect(await (await fetch(again.origin, { headers: { accept: 'text/html' } })).text()).toMatch(
    /written by a newer Ridgelarder/,
  );
});

test.each(['SIGTERM', 'SIGINT'] as const)(
  'on %s what was begun is finished, and the log of the database is folded in',
  async (signal) => {
    const app = await start();
    await fillDemo(app.origin);
    const { hostname, port } = new URL(app.origin);
    const settings = await (await fetch(`${app.origin}/settings`)).text();
    const version = /name="version" value="([^"]*)"/.exec(settings)?.[1] ?? '';
    const body = `unitSystem=us&currency=EUR&part=units&version=${encodeURIComponent(version)}`;
    const slow = request({
      hostname,
      port,
      method: 'POST',
      path: '/settings?/save',
      headers: {
        origin: app.origin,
        accept: 'text/html',
        'content-type': 'application/x-www-form-urlencoded',
        'content-length': body.length,
      },
    });
    slow.write(body.slice(0, 10));
    // The server has the head of the request when it has answered another one that came after it.
    await fetch(`${app.origin}/settings`);
    const stopped = app.stop(true, signal);
    await new Promise((resolve) => setTimeout(resolve, 300));
    slow.end(body.slice(10));
    const [response] = (await once(slow, 'response')) as [{ statusCode: number; resume(): void }];
    response.resume();
    expect(response.statusCode).toBe(303);
    expect(await stopped).toBe(0);
    expect(existsSync(database(app, '-wal'))).toBe(false);
    const stored = new DatabaseSync(database(app), { readOnly: true });
    expect(JSON.stringify(stored.prepare('select * from settings').all())).toContain('\\"us\\"');
    stored.close();
    running.pop();
    rmSync(app.dataFolder, { recursive: true });
  },
);

test('it does not start on what is damaged, and says what to do', () => {
  const folder = mkdtempSync(path.join(tmpdir(), 'ridgelarder-damaged-'));
  writeFileSync(path.join(folder, 'ridgelarder.sqlite'), 'no database '.repeat(1000));
  const { status, stderr } = spawnSync(process.execPath, [path.join(ROOT, 'src/tooling/start.ts')], {
    env: { ...process.env, RIDGELARDER_DATA: folder, PORT: '0' },
    encoding: 'utf8',
  });
  expect([status, stderr]).toEqual([
    1,
    expect.stringMatching(/is damaged \(file is not a database\).*npm run restore/),
  ]);
  rmSync(folder, { recursive: true });
});

test('its log has a line for each request, with the route and not the address', async () => {
  const lines: string[] = [];
  const app = await startBuiltApp({ RIDGELARDER_LOG: 'json' }, undefined, (line) => lines.push(line));
  running.push(app);
  await fillDemo(app.origin);
  await fetch(`${app.origin}/shelf/B01?secret=words`);
  await fetch(`${app.origin}/nowhere/at-all`);
  await expect.poll(() => lines.filter((line) => line.startsWith('{')).length).toBeGreaterThanOrEqual(4);
  const logged = lines
    .filter((line) => line.startsWith('{'))
    .map((line) => JSON.parse(line) as Record<string, unknown>);
  for (const entry of logged)
    expect(Object.keys(entry)).toEqual(['time', 'method', 'route', 'status', 'durationMs']);
  expect(logged).toContainEqual(expect.objectContaining({ method: 'POST', route: '/demo', status: 303 }));
  expect(logged).toContainEqual(
    expect.objectContaining({ method: 'GET', route: '/shelf/[code]', status: 200 }),
  );
  expect(logged).toContainEqual(expect.objectContaining({ route: null, status: 404 }));
  expect(lines.join('\n')).not.toMatch(/B01|secret|at-all/);
});
