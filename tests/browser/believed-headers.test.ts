/* What a stranger writes into a header opens nothing: at no address, under no name, of none that the program sets or believes. */
import { readdirSync, readFileSync } from 'node:fs';
import { request } from 'node:http';
import path from 'node:path';
import { text } from 'node:stream/consumers';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { fillDemo, startBuiltApp, type BuiltApp } from '../../src/tooling/built-app.ts';
import { ROOT } from '../../src/tooling/run.ts';
import { Passphrase } from '../../src/lib/server/access/passphrase.ts';

const PROXY = 'larder.example';
/** Settings of the server below the program, with which it would believe what a client says of itself. */
const BELIEVING = {
  HOST_HEADER: 'x-forwarded-host',
  PORT_HEADER: 'x-forwarded-port',
  ADDRESS_HEADER: 'x-real-ip',
  XFF_DEPTH: '2',
};

let app: BuiltApp;
let trip: string;
beforeAll(async () => {
  app = await startBuiltApp({
    RIDGELARDER_READERS: '127.0.0.2',
    RIDGELARDER_ORIGIN: `https://${PROXY}`,
    ...BELIEVING,
  });
  trip = (await fillDemo(app.origin)).replace(/\/\w+$/, '');
  await new Passphrase(app.dataFolder).set('walnut ladder seven fog');
});
afterAll(async () => {
  expect(await app.stop()).toBe(0);
});

/** Each with what could be gained by it. */
const HEADERS: Readonly<Record<string, readonly string[]>> = {
  'x-ridgelarder-reading': ['yes', '', '1'],
  'x-ridgelarder-protocol': ['https', 'http', 'file'],
  'x-ridgelarder-keeping': ['yes'],
  'x-ridgelarder-kept-at': ['2026-07-01T08:00:00Z'],
  'x-ridgelarder-pouch': ['yes'],
  'x-forwarded-for': ['127.0.0.1', '::1', '127.0.0.1, 127.0.0.1'],
  'x-forwarded-host': ['127.0.0.2', PROXY],
  'x-forwarded-proto': ['http', 'https'],
  'x-forwarded-port': ['80'],
  'x-real-ip': ['127.0.0.1'],
  'x-file-name': ['passphrase.json'],
  'x-http-method-override': ['GET', 'POST'],
  'x-original-url': ['/sign-in'],
  'x-sveltekit-action': ['true'],
  'x-sveltekit-error': ['true'],
  'x-sveltekit-page': ['true'],
  'x-sveltekit-pathname': ['/sign-in'],
  'x-sveltekit-prerender': ['true'],
  'x-sveltekit-routeid': ['/sign-in'],
  'x-sveltekit-search': ['?to=/'],
  'accept-language': ['de'],
  authorization: ['Basic eDp4'],
  cookie: ['ridgelarder-access=x; ridgelarder-device=x', '__Host-ridgelarder-access=x'],
  forwarded: ['for=127.0.0.1;host=127.0.0.2;proto=http'],
  origin: ['null', `https://${PROXY}`],
  referer: [`https://${PROXY}/`],
  'sec-fetch-site': ['same-origin', 'none'],
};

type Asked = { readonly at: string; readonly host?: string | undefined; readonly path: string };

/** Asks as no browser would: every header as given. @returns status and where it leads, or `body` */
const ask = ({ at, host, path }: Asked, headers: Readonly<Record<string, string>> = {}) =>
  new Promise<{ outcome: string; body: string }>((resolve, reject) => {
    const { hostname, port } = new URL(at);
    const named = { host: host ?? `${hostname}:${port}`, accept: 'text/html', ...headers };
    const sent = request({ hostname, port, path, headers: named }, (response) => {
      text(response).then((body) => {
        // Data of a page leads elsewhere by what it says.
        const told = /^\{"type":"redirect","location":"([^"]*)"/.exec(body)?.[1];
        const outcome = told ? `303 ${told}` : `${response.statusCode} ${response.headers.location ?? ''}`;
        resolve({ outcome, body });
      }, reject);
    });
    sent.on('error', reject).end();
  });

const PATHS = () => [
  '/',
  '/shelf',
  '/shelf/D02',
  '/shelf/D02/__data.json',
  '/shelf/lots.json',
  '/settings',
  `${trip}/card`,
  `${trip}/card/__data.json`,
  `${trip}/card.html`,
  `${trip}/packing`,
  `${trip}/menu`,
  `${trip}/trip.json`,
];
const refused = /^(401|403|303 \/sign-in)/;

test('no header opens anything to a stranger, and the address for readers opens no more by it', async () => {
  const places = [
    { at: app.origin },
    { at: app.origin, host: PROXY },
    { at: app.readersOrigin },
  ] as const satisfies Omit<Asked, 'path'>[];
  for (const place of places)
    for (const path of PATHS()) {
      const asked = { ...place, path };
      const plain = await ask(asked);
      if (place.at === app.origin) expect(plain.outcome, JSON.stringify(asked)).toMatch(refused);
      for (const [name, values] of Object.entries(HEADERS))
        for (const value of values) {
          const { outcome, body } = await ask(asked, { [name]: value });
          const what = `${JSON.stringify(asked)} ${name}: ${value}`;
          // A copy for later is not made of the page for signing in.
          if (refused.test(plain.outcome)) expect(outcome, what).toMatch(refused);
          else expect(outcome, what).toBe(plain.outcome);
          if (place.at === app.origin) expect(body, what).not.toContain('Bean chilli');
        }
    }
});

test('nothing is changed by what a header claims', async () => {
  for (const at of [app.origin, app.readersOrigin])
    for (const [name, values] of Object.entries(HEADERS))
      for (const value of values) {
        const response = await fetch(`${at}/shelf/D02?/discard`, {
          method: 'POST',
          headers: { origin: at, 'content-type': 'application/x-www-form-urlencoded', [name]: value },
          body: 'discarded=1&discardReason=x',
          redirect: 'manual',
        });
        expect([401, 403], `${at} ${name}: ${value}`).toContain(response.status);
      }
});

test('every header of our own that the sources name is tried above', () => {
  const sources = readdirSync(path.join(ROOT, 'src'), { recursive: true, encoding: 'utf8' }).filter((file) =>
    /(?<!\.test)\.(ts|svelte)$/.test(file),
  );
  const named = sources.flatMap((file) => [
    ...readFileSync(path.join(ROOT, 'src', file), 'utf8').matchAll(/x-(?:ridgelarder|file)-[a-z-]+/g),
  ]);
  expect(named.length).toBeGreaterThan(3);
  for (const [name] of named) expect(Object.keys(HEADERS), name).toContain(name);
});
