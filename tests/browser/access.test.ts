/* Who is let in: the start, signing in, links for reading, other sites' pages and names, and what a page may load. Each test builds on the one before. */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { request, type IncomingHttpHeaders } from 'node:http';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Page } from 'playwright';
import { expect, test } from 'vitest';
import { fillIn, press } from '../../src/tooling/browse.ts';
import { clockFrom } from '../../src/tooling/built-app.ts';
import { checkPage, newDemoTrip, projectFile, startApp, visit } from './harness.ts';

const WORDS = 'walnut ladder seven fog';
const OTHER_WORDS = 'anchor mitten eleven slate';
const FORM = 'application/x-www-form-urlencoded';
const STARTED = '2026-07-01T08:00:00Z';
const app = startApp(clockFrom(STARTED));

type Ended = { readonly code: unknown; readonly said: string };

/** Runs a program of the project to its end. @param typed goes to its standard input */
async function run(
  script: string,
  environment: Readonly<Record<string, string>>,
  typed = '',
  ...flags: string[]
): Promise<Ended> {
  const program = spawn(process.execPath, [projectFile('src/tooling', script), ...flags], {
    cwd: projectFile(),
    env: { ...process.env, ...environment },
  });
  let said = '';
  for (const stream of [program.stdout, program.stderr]) stream.on('data', (piece) => (said += piece));
  program.stdin.end(typed);
  const [code] = await once(program, 'close');
  return { code, said };
}

type Answer = {
  readonly status: number | undefined;
  readonly headers: IncomingHttpHeaders;
  readonly text: string;
};

/** Asks as no browser would: every header as given, no cookies, no redirect followed. */
function ask(
  address: string,
  headers: Readonly<Record<string, string>> = {},
  method = 'GET',
  body = '',
): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const { origin, pathname, search } = new URL(address);
    const asked = request(origin, { path: pathname + search, method, headers }, (response) => {
      let text = '';
      response.on('data', (piece) => (text += piece));
      response.on('end', () => resolve({ status: response.statusCode, headers: response.headers, text }));
    });
    asked.on('error', reject).end(body);
  });
}

const cookieOf = ({ headers }: Answer): string => headers['set-cookie']?.[0]?.split(';')[0] ?? '';
const signInBy = (origin: string, passphrase: string, more: Readonly<Record<string, string>> = {}) =>
  ask(
    `${origin}/sign-in?/in`,
    { 'content-type': FORM, accept: 'text/html', origin, ...more },
    'POST',
    new URLSearchParams({ passphrase, to: '/shelf' }).toString(),
  );

async function signIn(page: Page, passphrase: string): Promise<void> {
  await page.getByLabel('Passphrase').fill(passphrase);
  await press(page, 'Sign in');
}

/** Given the passphrase, the app goes on in the same folder; the next request is already asked for it. */
const setPassphrase = (passphrase: string): Promise<Ended> =>
  run('passphrase.ts', { RIDGELARDER_DATA: app.dataFolder }, `${passphrase}\n`);

let trip = '';
let link = '';

test('beyond this machine it does not start without a passphrase, and says how to set one', async () => {
  const folder = mkdtempSync(path.join(tmpdir(), 'ridgelarder-'));
  const environment = { PORT: '0', RIDGELARDER_DATA: folder };
  for (const address of ['0.0.0.0', '::', '192.0.2.1']) {
    const { code, said } = await run('start.ts', { ...environment, RIDGELARDER_HOST: address });
    expect(code).toBe(1);
    expect(said).toContain(`RIDGELARDER_HOST is ${address}`);
    expect(said).toContain('npm run passphrase');
  }
  for (const [variable, value] of [
    ['RIDGELARDER_HOST', 'larder.local'],
    ['RIDGELARDER_NAMES', 'larder.local,http://pantry'],
  ] as const) {
    const { code, said } = await run('start.ts', { ...environment, [variable]: value });
    expect(code).toBe(1);
    expect(said).toContain(`${variable} `);
  }
  rmSync(folder, { recursive: true });
});

test('a passphrase that is short or common is refused, and none is set by it', async () => {
  trip = (await newDemoTrip(app)).replace(/\/\w+$/, '');
  for (const [passphrase, why] of [
    ['short', 'at least 12'],
    ['passwordpassword', 'among the first'],
    ['', 'at least 12'],
  ] as const) {
    const { code, said } = await setPassphrase(passphrase);
    expect(code).toBe(1);
    expect(said).toContain(why);
  }
  expect((await ask(`${app.origin}/shelf`)).status).toBe(200);
});

test('once a passphrase is set, nothing is shown or changed without', async () => {
  expect((await setPassphrase(WORDS)).code).toBe(0);
  const { origin } = app;
  for (const address of ['/', '/shelf', '/shelf/D02', `${trip}/card`, '/settings/access', '/no/such/page']) {
    const page = await ask(origin + address, { accept: 'text/html' });
    expect(page.status, address).toBe(303);
    expect(page.headers.location).toBe(`/sign-in?to=${encodeURIComponent(address)}`);
    expect(page.text).toBe('');
  }
  const data = await ask(`${origin}${trip}/card/__data.json`);
  expect(JSON.parse(data.text)).toMatchObject({ type: 'redirect' });
  for (const address of ['/shelf/export.csv', `${trip}/trip.json`, `${trip}/notes.json`, '/shelf/lots.json'])
    expect((await ask(origin + address)).status, address).toBe(401);
  // A copy for use without a connection is never made of the page for signing in.
  const kept = { 'x-ridgelarder-keeping': 'yes', accept: 'text/html' };
  expect((await ask(`${origin}${trip}/card`, kept)).status).toBe(401);
  expect((await ask(`${origin}${trip}/card/__data.json`, kept)).status).toBe(401);
  const form = { origin, 'content-type': FORM, accept: 'text/html' };
  const sent = await ask(`${origin}/shelf/D02?/discard`, form, 'POST', 'discarded=1&discardReason=x');
  expect(sent.status).toBe(401);
  expect(sent.text).toContain('nothing was changed');
  expect((await ask(`${origin}/api/plan`, { 'content-type': 'application/json' }, 'POST', '{}')).status).toBe(
    401,
  );
  for (const cookie of [
    'ridgelarder-access=',
    'ridgelarder-access=guess',
    `ridgelarder-access=${'A'.repeat(43)}`,
  ])
    expect((await ask(`${origin}/shelf`, { accept: 'text/html', cookie })).status).toBe(303);
  // What the page for signing in is made of says nothing of what is kept here.
  expect((await ask(`${origin}/_app/version.json`)).status).toBe(200);
});

test('the passphrase leads on to the page that was asked for, without scripts too, and never to another site', async () => {
  const page = await app.open('/shelf?search=D02', { scripts: false, expected: /403/ });
  await signIn(page, OTHER_WORDS);
  await page.getByText('this is not the passphrase').first().waitFor();
  await signIn(page, WORDS);
  expect(page.url()).toBe(`${app.origin}/shelf?search=D02`);
  await page.getByRole('link', { name: 'D02', exact: true }).waitFor();

  for (const to of [
    'https://elsewhere.example/',
    '//elsewhere.example',
    '/\\elsewhere.example',
    '/.//elsewhere.example',
  ]) {
    const answer = await ask(
      `${app.origin}/sign-in?/in`,
      { 'content-type': FORM, accept: 'text/html', origin: app.origin },
      'POST',
      new URLSearchParams({ passphrase: WORDS, to }).toString(),
    );
    expect(answer.headers.location, to).toBe('/');
  }
});

test('the cookie is out of reach of scripts and other sites, and bears a token that is new each time', async () => {
  const [one, two] = [await signInBy(app.origin, WORDS), await signInBy(app.origin, WORDS)];
  const [cookie = ''] = one.headers['set-cookie'] ?? [];
  expect(cookie).toMatch(/^ridgelarder-access=[\w-]{43}; Max-Age=\d+; Path=\/; HttpOnly; SameSite=Lax$/i);
  expect(cookieOf(two)).not.toBe(cookieOf(one));
  const shelf = await ask(`${app.origin}/shelf`, { cookie: cookieOf(one) });
  expect(shelf.status).toBe(200);
  expect(shelf.headers['cache-control']).toBe('private, no-store');
  // Signed in anew, what the browser was signed in as before is over.
  await signInBy(app.origin, WORDS, { cookie: cookieOf(one) });
  expect((await ask(`${app.origin}/shelf`, { cookie: cookieOf(one) })).status).toBe(401);
  expect((await ask(`${app.origin}/shelf`, { cookie: cookieOf(two) })).status).toBe(200);
});

test('signing out ends one device, signing out everywhere ends all, and another passphrase too', async () => {
  const devices = [
    await app.open('/settings/access'),
    await app.open('/settings/access'),
    await app.open('/settings/access'),
  ];
  for (const page of devices) await signIn(page, WORDS);
  const [first, second, third] = devices as [Page, Page, Page];
  await first.getByText('this device').waitFor();
  await press(first, 'Sign out');
  await first.getByText('This device is signed out').waitFor();
  await visit(first, '/shelf');
  await first.getByLabel('Passphrase').waitFor();
  await visit(second, '/settings/access');
  await press(second, 'Sign out everywhere');
  for (const page of [second, third]) {
    await visit(page, '/shelf');
    await page.getByLabel('Passphrase').waitFor();
  }

  await signIn(third, WORDS);
  await third.getByRole('heading', { name: 'Shelf' }).waitFor();
  expect((await setPassphrase(OTHER_WORDS)).code).toBe(0);
  await visit(third, '/trips');
  await signIn(third, OTHER_WORDS);
  await third.getByRole('heading', { name: 'Trips' }).waitFor();
  expect((await setPassphrase(WORDS)).code).toBe(0);
});

test('a link opens one trip for reading, on a phone that never signed in', async () => {
  const owner = await app.open('/settings/access', { expected: /422/ });
  await signIn(owner, WORDS);
  await fillIn(owner, { forWhom: '', days: '0' });
  await press(owner, 'Make the link');
  await owner.getByText('No link yet').waitFor();
  await fillIn(owner, { forWhom: 'the party', days: '10' });
  await owner.getByLabel('It opens').selectOption(trip.split('/').at(-1) ?? '');
  await press(owner, 'Make the link');
  link = await owner.locator('.address').innerText();
  expect(link).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/sign-in\/link#[\w-]{43}$/);
  await visit(owner, '/settings/access');
  expect(await owner.content()).not.toContain(link.split('#')[1]);
  await owner.getByRole('rowheader', { name: 'the party' }).waitFor();

  const phone = await app.open('/sign-in', { expected: /403/ });
  const sent: string[] = [];
  phone.on('request', (asked) => sent.push(asked.url()));
  await visit(phone, link);
  await phone.getByRole('heading', { name: 'Trail card', exact: true }).waitFor();
  expect(phone.url()).toBe(`${app.origin}${trip}/card`);
  expect(sent.filter((url) => url.includes(link.split('#')[1] ?? '') && !url.includes('#'))).toEqual([]);
  await phone.getByRole('link', { name: 'Menu' }).click();
  await phone.getByRole('heading', { name: 'Menu', exact: true }).waitFor();
  expect(await phone.locator('main form, header nav').count()).toBe(0);
  await phone.getByRole('link', { name: 'Trail card' }).click();
  await phone.getByRole('link', { name: 'Packing lists' }).click();
  await phone
    .getByRole('heading', { name: /packs$/ })
    .first()
    .waitFor();
  for (const address of [
    `${trip}/party`,
    '/shelf',
    '/shelf/D02',
    '/trips',
    '/settings/access',
    `${trip}/notes.json`,
  ]) {
    const answer = await phone.request.get(address);
    expect(answer.status(), address).toBe(403);
  }
  await visit(phone, '/');
  expect(phone.url()).toBe(`${app.origin}${trip}/card`);
});

test('a link is pasted where no scripts run; one that does not exist opens nothing', async () => {
  const phone = await app.open('/sign-in/link', { scripts: false, expected: /403/ });
  await phone.getByLabel('Link').fill(`${link.slice(0, -1)}`);
  await press(phone, 'Open');
  await phone.getByText('this link opens nothing').first().waitFor();
  await phone.getByLabel('Link').fill(link);
  await press(phone, 'Open');
  await phone.getByRole('heading', { name: 'Trail card', exact: true }).waitFor();
});

test.each(['/sign-in', '/sign-in/link', '/sign-in?left'])(
  '%s can be used by everybody, on every screen',
  (address) => checkPage(app, address),
);
