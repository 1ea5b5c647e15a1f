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
import {
  barriers,
  checkPage,
  newDemoTrip,
  PHONE_PX,
  projectFile,
  startApp,
  tooWide,
  visit,
} from './harness.ts';

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
    const asked = request(
      origin,
      {
        path: pathname + search,
        method,
        agent: false, // the server may have closed a connection that waited
        headers: { ...headers, 'content-length': Buffer.byteLength(body) },
      },
      (response) => {
        let text = '';
        response.on('data', (piece) => (text += piece));
        response.on('end', () => resolve({ status: response.statusCode, headers: response.headers, text }));
      },
    );
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
    ['RIDGELARDER_PROXY', '192.0.2.5, proxy.example'],
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

test('the page about access says that nobody is asked yet, and how to set a passphrase', () =>
  checkPage(app, '/settings/access'));

test('a page of another site changes nothing, by a form, by JSON or otherwise', async () => {
  const { origin } = app;
  const lot = JSON.parse((await ask(`${origin}/shelf/lots.json`)).text) as {
    code: string;
    pouches: number;
  }[];
  const away = 'http://elsewhere.example';
  const strangers: Readonly<Record<string, string>>[] = [
    {},
    { origin: away },
    { origin: 'null' },
    { origin: origin.replace('http', 'https') },
    { origin: `${origin}.elsewhere.example` },
    { 'sec-fetch-site': 'cross-site' },
    { 'sec-fetch-site': 'same-site' },
    { referer: `${away}/${origin}` },
  ];
  for (const stranger of strangers)
    for (const [address, type, body] of [
      ['/shelf/D02?/discard', FORM, 'discarded=1&discardReason=x'],
      ['/shelf/D02?/discard', 'text/plain', 'discarded=1&discardReason=x'],
      ['/shelf/import/upload', 'application/octet-stream', 'code'],
      [`${trip}/notes.json`, 'application/json', '{"notes":[]}'],
      [`${trip}/notes.json`, 'text/plain', '{"notes":[]}'],
    ] as const)
      for (const method of ['POST', 'PUT', 'DELETE', 'PATCH']) {
        const answer = await ask(origin + address, { ...stranger, 'content-type': type }, method, body);
        expect(answer.status, `${method} ${address} ${type} ${JSON.stringify(stranger)}`).toBe(403);
      }
  const json = { 'content-type': 'application/json' };
  expect((await ask(`${origin}/api/plan`, { ...json, origin: away }, 'POST', '{}')).status).toBe(403);
  expect((await ask(`${origin}/api/plan`, json, 'POST', '{}')).status).toBe(400);
  for (const own of [{ origin }, { 'sec-fetch-site': 'same-origin' }, { referer: `${origin}/trips` }])
    expect(
      (await ask(`${origin}${trip}/notes.json`, { ...json, ...own }, 'POST', '{"notes":[]}')).status,
    ).toBe(200);
  expect(JSON.parse((await ask(`${origin}/shelf/lots.json`)).text)).toEqual(lot);
});

test('a foreign name that leads to this machine is told nothing', async () => {
  const { host, port } = new URL(app.origin);
  for (const foreign of [
    'elsewhere.example',
    `elsewhere.example:${port}`,
    `localhost.elsewhere.example:${port}`,
    '127.0.0.1',
    `[::1]:${port}`,
    `${host}.`,
  ]) {
    for (const address of ['/', '/shelf/lots.json', '/service-worker.js', '/icon.svg']) {
      const answer = await ask(app.origin + address, { host: foreign, origin: `http://${foreign}` });
      expect(answer.status, `${foreign} ${address}`).toBe(421);
      expect(answer.text).toContain(app.origin);
      expect(answer.text).toContain('RIDGELARDER_NAMES');
    }
  }
});

test('every answer bears the headers that keep other sites out', async () => {
  const { origin } = app;
  for (const address of [
    '/',
    '/shelf/lots.json',
    '/shelf/export.csv',
    '/icon.svg',
    '/service-worker.js',
    '/no/such/page',
    `${trip}/card.html`,
  ]) {
    const { headers } = await ask(origin + address, { accept: 'text/html' });
    expect(headers, address).toMatchObject({
      'x-content-type-options': 'nosniff',
      'referrer-policy': 'same-origin',
      'cross-origin-opener-policy': 'same-origin',
      'cross-origin-resource-policy': 'same-origin',
    });
    expect(headers['permissions-policy'], address).toContain('geolocation=()');
    expect(headers['content-type'], address).toMatch(/^[a-z]+\/[a-z+.-]+/);
    expect(headers['access-control-allow-origin'], address).toBeUndefined();
    const policy = String(headers['content-security-policy']);
    expect(policy, address).toContain("frame-ancestors 'none'");
    expect(policy, address).not.toMatch(/unsafe-inline|unsafe-eval|\*|https?:/);
    // Where there is no TLS, a browser must not be told to insist on it.
    expect(headers['strict-transport-security']).toBeUndefined();
  }
  const { headers } = await ask(`${origin}/shelf`);
  expect(headers['content-security-policy']).toMatch(/default-src 'none'.*script-src 'self' 'nonce-[^']+'/);
  const again = await ask(`${origin}/shelf`);
  expect(again.headers['content-security-policy']).not.toBe(headers['content-security-policy']);
});

test('what is written into a page neither runs nor shapes it', async () => {
  const page = await app.open('/shelf', { expected: /not allowed by|violates|Refused|requires 'Trusted/ });
  const happened = await page.evaluate(async () => {
    const violated: string[] = [];
    addEventListener('securitypolicyviolation', ({ effectiveDirective }) =>
      violated.push(effectiveDirective),
    );
    const { body } = document;
    const script = document.createElement('script');
    const style = document.createElement('style');
    style.textContent = 'h1 { color: rgb(1, 2, 3) }';
    const image = document.createElement('img');
    image.src = 'http://elsewhere.example/x.png';
    const marked = document.createElement('p');
    marked.setAttribute('style', 'color: rgb(1, 2, 3)');
    let isRefused = false;
    try {
      script.textContent = 'window.ran = true';
    } catch {
      isRefused = true;
    }
    body.append(script, style, image, marked);
    await fetch('http://elsewhere.example/').catch(() => undefined);
    // The browser reports them in its own time, each of the five kinds at least once.
    for (let looks = 0; new Set(violated).size < 5 && looks < 200; looks += 1)
      await new Promise((resolve) => setTimeout(resolve, 100));
    const colour = (element: Element) => getComputedStyle(element).color;
    return {
      violated: [...new Set(violated)].sort(),
      isRefused,
      ran: 'ran' in window,
      colours: [document.querySelector('h1')!, marked].map(colour),
    };
  });
  expect(happened).toMatchObject({ isRefused: true, ran: false });
  expect(happened.colours).not.toContain('rgb(1, 2, 3)');
  expect(happened.violated).toEqual([
    'connect-src',
    'img-src',
    'require-trusted-types-for',
    'style-src-attr',
    'style-src-elem',
  ]);
});

test('what is typed comes back as text, and no file is served but those of the program', async () => {
  const { origin } = app;
  const markup = '"><script>window.ran = true</script><img src=x onerror=alert(1)>';
  const search = `/shelf?search=${encodeURIComponent(markup)}`;
  const page = await app.open(search);
  expect(await page.getByLabel('Search').inputValue()).toBe(markup);
  expect(await page.evaluate(() => 'ran' in window)).toBe(false);
  const { text } = await ask(origin + search);
  expect(text).not.toContain('<script>window');
  expect(text).not.toContain('<img src=x');
  for (const address of [
    '/.git/HEAD',
    '/.git/config',
    '/package.json',
    '/src/hooks.server.ts',
    '/data/passphrase.json',
    '/..%2fpackage.json',
    '/_app/..%2f..%2f..%2fpackage.json',
  ])
    expect((await ask(origin + address)).status, address).toBe(404);
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
  await page.getByText('wrong passphrase').first().waitFor();
  await signIn(page, WORDS);
  expect(page.url()).toBe(`${app.origin}/shelf?search=D02`);
  await page.getByRole('link', { name: 'D02', exact: true }).waitFor();
  await press(page, 'Sign out', 'footer');
  await page.getByText('Signed out. Trips saved on this device were removed').waitFor();
  expect(await page.getByRole('button', { name: 'Sign out' }).count()).toBe(0);

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

test('every page offers signing out to whoever is signed in, in German too, but not on paper or in a copy for the trail', async () => {
  const phone = await app.open('/sign-in', { widthPx: PHONE_PX });
  await signIn(phone, WORDS);
  await visit(phone, `/language?to=de&from=${trip}/card`);
  for (const page of ['/', '/kitchen', `${trip}/card`]) {
    await visit(phone, page);
    await phone.getByRole('button', { name: 'Abmelden', exact: true }).waitFor();
    expect(await tooWide(phone), page).toBe(0);
  }
  expect(await barriers(phone)).toEqual([]);
  await phone.emulateMedia({ media: 'print' });
  expect(await phone.getByText('Abmelden').isVisible()).toBe(false);
  const cookie = cookieOf(await signInBy(app.origin, WORDS));
  const card = (more = {}) => ask(`${app.origin}${trip}/card`, { cookie, accept: 'text/html', ...more });
  expect((await card()).text).toContain('Sign out');
  expect((await card({ 'x-ridgelarder-keeping': 'yes' })).text).not.toContain('Sign out');
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
  const devices: Page[] = [];
  while (devices.length < 3) devices.push(await app.open('/settings/access', { apart: true }));
  for (const page of devices) await signIn(page, WORDS);
  const [first, second, third] = devices as [Page, Page, Page];
  await first.getByText('this device').waitFor();
  await first.evaluate(async () => (await caches.open('trips-kept')).put('/kept', new Response('x')));
  await press(first, 'Sign out', 'footer');
  await first.getByText('Signed out. Trips saved on this device were removed').waitFor();
  await expect.poll(() => first.evaluate(() => caches.has('trips-kept'))).toBe(false);
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
  await owner.getByText('Link not created.').waitFor();
  await fillIn(owner, { forWhom: 'the group', days: '10' });
  await owner.getByLabel('Gives access to').selectOption(trip.split('/').at(-1) ?? '');
  await press(owner, 'Make the link');
  link = await owner.locator('.address').innerText();
  expect(link).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/sign-in\/link#[\w-]{43}$/);
  await visit(owner, '/settings/access');
  expect(await owner.content()).not.toContain(link.split('#')[1]);
  await owner.getByRole('rowheader', { name: 'the group' }).waitFor();

  const phone = await app.open('/sign-in', { apart: true, expected: /403/ });
  const sent: string[] = [];
  phone.on('request', (asked) => sent.push(asked.url()));
  await visit(phone, link);
  await phone.getByRole('heading', { name: 'Trail card', exact: true }).waitFor();
  expect(phone.url()).toBe(`${app.origin}${trip}/card`);
  expect(sent.filter((url) => url.includes(link.split('#')[1] ?? '') && !url.includes('#'))).toEqual([]);
  await phone.getByRole('link', { name: 'Menu' }).click();
  await phone.getByRole('heading', { name: 'Menu', exact: true }).waitFor();
  const menu = await phone.locator('main').innerText();
  expect(menu).toMatch(/kcal eaten/);
  expect(menu).not.toMatch(/eaten of/);
  expect(await phone.locator('form, header nav').count()).toBe(0);
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
  await phone.getByText('this link does not work').first().waitFor();
  await phone.getByLabel('Link').fill(link);
  await press(phone, 'Open');
  await phone.getByRole('heading', { name: 'Trail card', exact: true }).waitFor();
});

test.each(['/sign-in', '/sign-in/link', '/sign-in?left'])(
  '%s can be used by everybody, on every screen',
  (address) => checkPage(app, address),
);

type Note = { readonly kind: string; readonly code: string; readonly outcome: string };

test('by a link that allows it, notes of the trail are taken for that trip alone, until it expires', async () => {
  const owner = await app.open(`${trip}/pouches`);
  await signIn(owner, WORDS);
  await press(owner, /^Set aside \d+ pouches$/);
  await press(owner, 'Pack');
  await visit(owner, '/settings/access');
  await fillIn(owner, { forWhom: 'the cook', days: '10' });
  await owner.getByLabel('accepts trail notes').check();
  await press(owner, 'Make the link');
  const forCook = await owner.locator('.address').innerText();
  expect(await barriers(owner)).toEqual([]);
  await owner.setViewportSize({ width: PHONE_PX, height: 900 });
  expect(await tooWide(owner)).toBe(0);

  const phone = await app.open('/sign-in', {
    widthPx: PHONE_PX,
    apart: true,
    expected: /401|403|ERR_CONNECTION_REFUSED/,
  });
  await visit(phone, forCook);
  const meal = phone.getByRole('group', { name: / of day 1$/ }).first();
  if (!(await meal.isVisible())) await phone.locator('summary', { hasText: /^Day 1 / }).click();
  await meal.getByRole('button', { name: 'Eaten', exact: true }).click();
  await phone.getByText(/1 pouch eaten.*: entered/).waitFor();
  const { notes } = (await (await phone.request.get(`${trip}/notes.json`)).json()) as { notes: Note[] };
  expect(notes.map(({ kind, outcome }) => `${kind}: ${outcome}`)).toEqual(['eaten: entered']);
  const code = notes[0]?.code ?? '';
  const post = (address: string, options: object = {}) =>
    phone.request.post(address, { headers: { origin: app.origin }, failOnStatusCode: false, ...options });
  const menu = await (await phone.request.get(`${trip}/menu`)).text();
  expect(menu).toContain('id="day-1"');
  expect(menu).not.toContain('deficitKcal');
  expect((await post(`${trip}/menu?/planAgain`, { form: {} })).status()).toBe(403);
  expect((await post(`/shelf/${code}?/discard`, { form: { discarded: 1 } })).status()).toBe(403);
  expect((await post(`${trip.slice(0, -1)}x/notes.json`, { data: { notes: [] } })).status()).toBe(403);

  // The clock of the program goes on by eleven days.
  await app.stop();
  await app.restart({ CLOCK_BEGINS_AT: '2026-07-12T09:00:00Z' });
  expect((await phone.request.get(`${trip}/card`, { maxRedirects: 0 })).status()).toBe(401);
  await meal.getByRole('button', { name: 'Eaten', exact: true }).click();
  await phone.getByText('This device is not signed in any more').waitFor();
  await phone.getByText('1 trail note not sent yet.').waitFor();
  await visit(phone, link);
  await phone.getByText('this link does not work').first().waitFor();

  // Who was signed in still is, and sees in the list what has expired.
  await visit(owner, '/settings/access');
  const row = owner.getByRole('row', { name: /the cook/ });
  expect(await row.innerText()).toContain('expired');
  await row.getByRole('button', { name: /^Take back/ }).click();
  await owner.getByText('Link revoked.').waitFor();
  expect(await row.count()).toBe(0);
  await app.stop();
  await app.restart();
});

test('a link that is taken back opens nothing from then on', async () => {
  const phone = await app.open('/sign-in', { apart: true, expected: /403/ });
  await visit(phone, link);
  await phone.getByRole('heading', { name: 'Trail card', exact: true }).waitFor();
  const owner = await app.open('/settings/access');
  await signIn(owner, WORDS);
  await press(owner, /^Take back.*the group/);
  await visit(phone, `${trip}/card`);
  await phone.getByLabel('Passphrase').waitFor();
  await visit(phone, link);
  await phone.getByText('this link does not work').first().waitFor();
});

test('after five wrong passphrases none is looked at for a while; whoever is signed in stays so, and a browser that was is let in again', async () => {
  const before = await signInBy(app.origin, WORDS);
  const cookie = cookieOf(before);
  const mark = before.headers['set-cookie']?.[1] ?? '';
  expect(mark).toMatch(
    /^ridgelarder-device=[\w-]{43}\.[\w-]{43}; Max-Age=34560000; Path=\/; HttpOnly; SameSite=Lax$/i,
  );
  for (let wrong = 0; wrong < 5; wrong += 1)
    expect((await signInBy(app.origin, OTHER_WORDS)).status).toBe(403);
  for (const passphrase of [OTHER_WORDS, WORDS]) {
    const answer = await signInBy(app.origin, passphrase);
    expect(answer.status).toBe(429);
    expect(Number(answer.headers['retry-after'])).toBeGreaterThan(0);
    expect(Number(answer.headers['retry-after'])).toBeLessThanOrEqual(30);
    expect(answer.text).toMatch(/[Tt]oo many wrong attempts[^<]*try again in 1 minute/);
    expect(answer.headers['set-cookie']).toBeUndefined();
  }
  expect((await ask(`${app.origin}/shelf`, { cookie })).status).toBe(200);
  const again = await signInBy(app.origin, WORDS, { cookie: mark.split(';')[0] ?? '' });
  expect(again.headers.location).toBe('/shelf');
});

test('with a passphrase it serves the network, under its addresses and the names it is told, and nobody once that is gone', async () => {
  await app.stop();
  await app.restart({ RIDGELARDER_HOST: '0.0.0.0', RIDGELARDER_NAMES: 'larder.example' });
  const { port } = new URL(app.origin);
  const here = `http://127.0.0.1:${port}`;
  for (const name of [`127.0.0.1:${port}`, 'larder.example', `larder.example:${port}`])
    expect((await ask(`${here}/shelf`, { host: name, accept: 'text/html' })).status, name).toBe(303);
  for (const name of ['elsewhere.example', `127.0.0.2:${port}`])
    expect((await ask(`${here}/shelf`, { host: name })).status, name).toBe(421);
  const asked = { host: `larder.example:${port}`, accept: 'text/html' };
  const plain = await ask(`${here}/sign-in`, asked);
  expect(plain.text).toContain('this connection is not encrypted');
  const signedIn = await signInBy(here, WORDS, { ...asked, origin: `http://larder.example:${port}` });
  expect(signedIn.headers.location).toBe('/shelf');
  const cookie = cookieOf(signedIn);
  expect((await ask(`${here}/shelf`, { ...asked, cookie })).status).toBe(200);

  const removed = await run('passphrase.ts', { RIDGELARDER_DATA: app.dataFolder }, '', '--remove');
  expect(removed.code).toBe(0);
  for (const headers of [asked, { ...asked, cookie }]) {
    const answer = await ask(`${here}/shelf`, headers);
    expect(answer.status).toBe(503);
    expect(answer.text).toContain('npm run passphrase');
    expect(answer.headers['retry-after']).toBe('10');
  }
});
