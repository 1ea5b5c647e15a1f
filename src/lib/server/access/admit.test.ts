import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Cookies, RequestEvent } from '@sveltejs/kit';
import { afterEach, expect, test, vi } from 'vitest';
import { openTestApp, temporaryFolder } from '../test-data.ts';
import { markForReading, NEEDS_PASSPHRASE } from '../reading.ts';
import { addressOf, admit, isFromHere, letIn } from './admit.ts';

const ORIGIN = 'http://127.0.0.1:4810';

afterEach(() => vi.unstubAllEnvs());

type Asked = {
  readonly route: string;
  readonly method?: string;
  readonly headers?: Readonly<Record<string, string>>;
  readonly origin?: string;
  /** Whether it came in at the address for readers. */
  readonly forReading?: boolean;
};

/** What `admit` takes of an event, with cookies that are kept. */
function eventOf(app: App.Locals['app'], asked: Asked) {
  const { route, method = 'GET', headers = {}, origin = ORIGIN, forReading = false } = asked;
  const req = {};
  if (forReading) markForReading(req);
  const kept = new Map<string, string>();
  const set: { readonly name: string; readonly options: unknown }[] = [];
  const cookies = {
    get: (name: string) => kept.get(name),
    set: (name: string, value: string, options: unknown) => {
      kept.set(name, value);
      set.push({ name, options });
    },
  } as unknown as Cookies;
  const event = {
    request: new Request(origin + route, { method, headers }),
    url: new URL(origin + route),
    route: { id: route },
    params: {},
    cookies,
    isDataRequest: false,
    locals: { app } as App.Locals,
    setHeaders: () => undefined,
    platform: { req },
  };
  return { event: event as unknown as Parameters<typeof admit>[0], cookies, set };
}

const refusal = (work: Promise<void>) =>
  work.then(
    () => undefined,
    (thrown: { readonly status: number }) => thrown.status,
  );

test('without a passphrase everything is open on this machine, and nothing beyond it', async () => {
  const app = await openTestApp();
  const { event } = eventOf(app, { route: '/settings' });
  await admit(event);
  expect(event.locals.readsOnly).toBe(false);
  vi.stubEnv(NEEDS_PASSPHRASE, 'yes');
  expect(await refusal(admit(event))).toBe(503);
});

test('a passphrase that cannot be read lets nobody in', async () => {
  const folder = await temporaryFolder();
  const app = await openTestApp(folder);
  await writeFile(join(folder, 'passphrase.json'), '{}');
  const { event } = eventOf(app, { route: '/shelf' });
  await expect(admit(event)).rejects.toMatchObject({ code: 'Unusable' });
  expect(event.locals.readsOnly).toBe(true);
});

test('the address for readers asks for no passphrase, and no passphrase opens more of it', async () => {
  const app = await openTestApp();
  const forReading = true;
  const lot = eventOf(app, { route: '/shelf/[code]', forReading });
  await admit(lot.event);
  expect(lot.event.locals.readsOnly).toBe(true);
  expect(await refusal(admit(eventOf(app, { route: '/shelf', forReading }).event))).toBe(403);
  expect(
    await refusal(admit(eventOf(app, { route: '/manifest.webmanifest', forReading }).event)),
  ).toBeUndefined();
  const post = { route: '/shelf/[code]', method: 'POST', headers: { origin: ORIGIN }, forReading };
  expect(await refusal(admit(eventOf(app, post).event))).toBe(403);
});

test('whoever is not signed in is led to signing in, and back to where they were going', async () => {
  const app = await openTestApp();
  await app.access.passphrase.set('walnut ladder seven fog');
  const page = eventOf(app, { route: '/trips', headers: { accept: 'text/html' } });
  await expect(admit(page.event)).rejects.toMatchObject({ status: 303, location: '/sign-in?to=%2Ftrips' });
  expect(await refusal(admit(eventOf(app, { route: '/shelf/lots.json' }).event))).toBe(401);
  for (const route of ['/sign-in', '/language', '/manifest.webmanifest'])
    expect(await refusal(admit(eventOf(app, { route }).event)), route).toBeUndefined();
});

test('behind TLS the cookie is held to it, and elsewhere it is not', async () => {
  const app = await openTestApp();
  for (const [origin, name, secure] of [
    ['https://larder.example', '__Host-ridgelarder-access', true],
    [ORIGIN, 'ridgelarder-access', false],
  ] as const) {
    const { event, cookies, set } = eventOf(app, { route: '/sign-in', origin });
    letIn(cookies, event.url, 'token', 60);
    expect(set).toEqual([
      { name, options: { path: '/', httpOnly: true, sameSite: 'lax', secure, maxAge: 60 } },
    ]);
  }
});

type From = { readonly origin: string; readonly arrived?: string; readonly told?: string };
const asking = ({ origin, arrived = '127.0.0.1', told }: From) =>
  ({
    request: new Request(origin, { headers: told === undefined ? {} : { 'x-forwarded-for': told } }),
    url: new URL(origin),
    getClientAddress: () => arrived,
  }) satisfies Pick<RequestEvent, 'request' | 'url' | 'getClientAddress'>;

const TLS = 'https://larder.example';

test('behind a proxy the address that it adds counts; of anybody else, nothing that is claimed does', () => {
  vi.stubEnv('RIDGELARDER_PROXY', '198.51.100.1, 2001:db8::1');
  const told = '203.0.113.1, 192.0.2.7';
  for (const arrived of ['127.0.0.1', '::1', '198.51.100.1', '::ffff:198.51.100.1', '2001:db8::1'])
    expect(addressOf(asking({ origin: TLS, arrived, told })), arrived).toBe('192.0.2.7');
  expect(addressOf(asking({ origin: TLS }))).toBe('127.0.0.1');
  // Somebody who asks directly under the name of the proxy, and under that of this machine.
  expect(addressOf(asking({ origin: TLS, arrived: '198.51.100.2', told }))).toBe('198.51.100.2');
  expect(addressOf(asking({ origin: ORIGIN, told }))).toBe('127.0.0.1');
});

test('on this machine is who asks from it without a proxy', () => {
  expect(isFromHere(asking({ origin: ORIGIN }))).toBe(true);
  expect(isFromHere(asking({ origin: ORIGIN, arrived: '::1' }))).toBe(true);
  expect(isFromHere(asking({ origin: ORIGIN, arrived: '192.0.2.1' }))).toBe(false);
  expect(isFromHere(asking({ origin: TLS }))).toBe(false);
  expect(isFromHere(asking({ origin: ORIGIN, told: '192.0.2.1' }))).toBe(false);
});
