/* Texts that would be markup, scripts, links or patterns if anything took them for such, put into every field there is: all pages show them to the letter. */
import { readFileSync } from 'node:fs';
import { randomUUID } from 'node:crypto';
import { expect, test } from 'vitest';
import type { TripInput } from '../../src/lib/planning/model/trip.ts';
import { fillDemo } from '../../src/tooling/built-app.ts';
import { projectFile, startApp } from './harness.ts';

const app = startApp();

const MARKERS = [
  '<img class=evil src=x onerror=ran=1>',
  '"><svg class=evil onload=ran=1>',
  '<strong>evil</strong>',
  '<link>evil</link>',
  'javascript:ran=1',
  '</script><script>ran=1</script>',
  "{evil} ${evil} '{evil}'",
];
/** What no answer holds as it stands: each `<` of a user has to be written in another way. */
const AS_MARKUP = /<(?:img|svg) class=evil|<(?:strong|link)>evil|<script>ran/;
/** Forms that take something away or end it. */
const TAKES_AWAY = /delete|discard|remove|reset|clear|finish|demo|sign|restore|undo|bin/i;
const REFUSED = /status of 4\d\d|\bnull\b/;

let count = 0;
/** The next hostile text, with a number in front, as some names must not come twice. */
const hostile = (mark = MARKERS[count % MARKERS.length]) => `${++count}${mark}`;
const asCode = () => hostile(MARKERS[count % 2 === 0 ? 0 : 6]).replaceAll('/', '');

async function post(path: string, body: FormData | string, type?: string): Promise<Response> {
  const response = await fetch(`${app.origin}${path}`, {
    method: 'POST',
    headers: { origin: app.origin, accept: 'text/html', ...(type && { 'content-type': type }) },
    body,
    redirect: 'manual',
  });
  expect(response.status, `${path}: ${response.status}`).toBeLessThan(500);
  return response;
}

const formWith = (fields: Readonly<Record<string, string | Blob>>): FormData => {
  const form = new FormData();
  for (const [name, value] of Object.entries(fields)) form.append(name, value);
  return form;
};

/** A shelf, foods, a trip with its route and notes: as files, which hold texts that no form takes. */
async function sendFiles(): Promise<string> {
  const [header = '', ...rows] = readFileSync(projectFile('demo-data/shelf.csv'), 'utf8').trim().split('\n');
  const codes: string[] = [];
  const quoted = (text: string) => `"${text.replaceAll('"', '""')}"`;
  const evilRows = rows.map((row) => {
    const cells = row.split(',');
    const code = asCode();
    codes.push(code);
    return [quoted(code), quoted(hostile()), ...cells.slice(2, 22), quoted(hostile())].join(',');
  });
  const sent = await fetch(`${app.origin}/shelf/import/upload`, {
    method: 'POST',
    headers: { origin: app.origin, 'content-type': 'text/csv', 'x-file-name': encodeURIComponent(hostile()) },
    body: [header, ...evilRows.filter((row) => !row.includes('"Stir'))].join('\n'),
  });
  const { location } = (await sent.json()) as { location: string };
  const page = await app.open(location, { expected: REFUSED });
  const look = page.getByRole('button', { name: 'Preview import' });
  if (await look.isVisible()) await look.click();
  await page.getByRole('button', { name: /^Import/ }).click();
  await page.waitForURL(/\/shelf$|\/shelf\?/);

  const foods = `name;water;protein;fat;carbohydrate;source\n${MARKERS.map((mark) => `${quoted(hostile(mark))};60;10;10;18;${quoted(mark)}`).join('\n')}`;
  await post('/kitchen/foods?/import', formWith({ file: new File([foods], hostile()) }));

  const trip = JSON.parse(readFileSync(projectFile('demo-data/trip.json'), 'utf8')) as TripInput;
  const evilTrip = {
    ...trip,
    name: MARKERS.slice(0, 4).join(' '),
    party: trip.party.map((eater) => ({ ...eater, name: hostile().slice(0, 40) })),
  };
  const opened = await post(
    '/trips/new?/open',
    formWith({ file: new File([JSON.stringify(evilTrip)], 'trip.json') }),
  );
  expect(opened.status).toBe(303);
  const path = new URL(opened.headers.get('location') ?? '', app.origin).pathname.replace(/\/menu$/, '');

  const route = readFileSync(projectFile('demo-data/ridge-route.gpx'), 'utf8').replace(
    /<name>.*?<\/name>/g,
    () => `<name><![CDATA[${hostile()}]]></name>`,
  );
  await post(`${path}/route?/import`, formWith({ file: new File([route], hostile()) }));
  const notes = codes.slice(0, 5).map((code) => ({
    id: randomUUID(),
    at: '2027-07-05T10:00:00Z',
    kind: 'eaten',
    code,
    pouches: 1,
    text: hostile(),
  }));
  await post(`${path}/notes.json`, JSON.stringify({ notes }), 'application/json');
  return path;
}

type Form = {
  readonly action: string;
  readonly fields: readonly (readonly [string, string])[];
  readonly texts: readonly string[];
};

test('no text of a user is ever more than a text', async () => {
  await fillDemo(app.origin);
  const trip = await sendFiles();
  const window = await app.open('/', { expected: REFUSED });
  const seen = new Map<string, string>();

  /** Opens all pages that links lead to; at each: nothing of ours was made of a user's text, and no script ran. */
  const walk = async (onPage: (address: string) => Promise<void>) => {
    const open = [
      '/',
      '/language',
      trip,
      `${trip}/card.html`,
      `${trip}/card?paper=a5`,
      '/shelf/labels',
      '/bin',
      '/kitchen/foods?q=evil',
    ];
    const visited = new Set<string>();
    for (let address = open.shift(); address !== undefined; address = open.shift()) {
      const [path = ''] = address.split('#');
      const kind = path
        .replace(/[0-9a-f]{8}-[0-9a-f-]{27}|(?<=\/shelf\/)(?!import|new|labels|pictures)[^/?]+/g, '…')
        .replace(/=[^&]*/g, '=');
      if (visited.has(path) || [...visited].filter((other) => seen.get(other) === kind).length >= 2) continue;
      visited.add(path);
      seen.set(path, kind);
      const response = await fetch(app.origin + path, {
        headers: { accept: 'text/html' },
        redirect: 'follow',
      });
      const type = response.headers.get('content-type') ?? '';
      expect(response.status, path).toBeLessThan(500);
      if (!type.includes('html')) {
        await response.body?.cancel();
        continue;
      }
      expect(AS_MARKUP.exec(await response.text())?.[0], path).toBeUndefined();
      await window.goto(path, { waitUntil: 'load' });
      const found = await window.evaluate(() => ({
        evil: [
          ...document.querySelectorAll('.evil, a[href^="javascript:" i], [action^="javascript:" i]'),
        ].map((element) => element.outerHTML),
        ran: 'ran' in globalThis,
        links: [...document.querySelectorAll<HTMLAnchorElement>('a[href]')]
          .filter(({ origin }) => origin === location.origin)
          .map(({ href }) => href.slice(location.origin.length)),
        text: document.body.innerText,
        marked: [...document.querySelectorAll('strong, em, a, link')].filter(
          ({ innerHTML }) => innerHTML === 'evil',
        ).length,
      }));
      expect([found.evil, found.ran, found.marked], path).toEqual([[], false, 0]);
      open.push(...found.links);
      await onPage(path);
    }
    return visited;
  };

  const formsHere = () =>
    window.evaluate((): Form[] =>
      [...document.forms]
        .filter(({ method }) => method === 'post')
        .map((form) => ({
          action: form.action.slice(location.origin.length),
          fields: [...new FormData(form)].filter(
            (field): field is [string, string] => typeof field[1] === 'string',
          ),
          texts: [...form.elements]
            .filter(
              (element) =>
                element instanceof HTMLTextAreaElement ||
                (element instanceof HTMLInputElement && ['text', 'search'].includes(element.type)),
            )
            .map((element) => (element as HTMLInputElement).name),
        })),
    );
  let forms = 0;
  const sent = new Set<string>();
  await walk(async () => {
    for (const { action, fields, texts } of await formsHere()) {
      const kind = action.replace(/[0-9a-f]{8}-[0-9a-f-]{27}/g, '…') + texts.join();
      if (texts.length === 0 || TAKES_AWAY.test(action) || sent.has(kind)) continue;
      sent.add(kind);
      // A refused form shows what was typed; one that is taken shows it ever after. Fields that hold a number are tried both ways.
      for (const spare of [false, true]) {
        const body = new URLSearchParams();
        for (const [name, value] of fields)
          body.append(name, texts.includes(name) && !(spare && /^[\d.,-]+$/.test(value)) ? hostile() : value);
        const response = await post(action, body.toString(), 'application/x-www-form-urlencoded');
        expect(AS_MARKUP.exec(await response.text())?.[0], action).toBeUndefined();
        forms += 1;
      }
    }
  });
  expect(forms).toBeGreaterThan(40);

  await window.context().addCookies([{ name: 'language', value: 'de', url: app.origin }]);
  const shown: string[] = [];
  const visited = await walk(async () => {
    shown.push(await window.locator('body').innerText());
    await window.emulateMedia({ media: 'print' });
    expect(await window.evaluate(() => document.querySelectorAll('.evil').length)).toBe(0);
    await window.emulateMedia({ media: 'screen' });
  });
  expect(visited.size).toBeGreaterThan(30);
  // To the letter, also where a sentence marks parts.
  for (const mark of MARKERS)
    expect(
      shown.some((text) => text.includes(mark)),
      mark,
    ).toBe(true);
}, 900_000);
