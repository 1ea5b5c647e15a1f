/*
 * `npm run test:fuzz`: throws what people, programs and attackers might send at every reader of files and every endpoint. `-- --cases 2000` tries so many in all,
 * `--seed 7` the same ones again. Whatever is sent: no error of the server (500), and what is stored afterwards is whole. The case that kept the processor longest is
 * printed and judged by nobody: tests/property/hostile-input.test.ts counts the steps of the readers.
 */
import { globSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { parseArgs } from 'node:util';
import fc from 'fast-check';
import { readFoodsCsv } from '../../src/lib/foods/read-foods-csv.ts';
import { Settings } from '../../src/lib/planning/model/settings.ts';
import { Trip } from '../../src/lib/planning/model/trip.ts';
import { RouteError } from '../../src/lib/planning/route/route-error.ts';
import { routeFromGpx } from '../../src/lib/planning/route/route-from-gpx.ts';
import { readJsonFile } from '../../src/lib/read-json-file.ts';
import { checkData } from '../../src/lib/server/backups/check-data.ts';
import { openDatabase } from '../../src/lib/server/database/open-database.ts';
import { openCsv } from '../../src/lib/shelf-csv/csv-records.ts';
import { guessMapping } from '../../src/lib/shelf-csv/guess-mapping.ts';
import { judgeRows } from '../../src/lib/shelf-csv/preview-import.ts';
import { UnreadableFile } from '../../src/lib/shelf-csv/text-encoding.ts';
import { ensureBuilt } from '../../src/tooling/build.ts';
import { fillDemo } from '../../src/tooling/built-app.ts';
import { ROOT, run } from '../../src/tooling/run.ts';
import { serve } from '../../src/tooling/serve.ts';
import { formsOf, type Form } from './forms.ts';
import { changed, changedJson, text } from './hostile.ts';

const { values: asked } = parseArgs({
  options: { cases: { type: 'string' }, seed: { type: 'string' }, largest: { type: 'boolean' } },
});
const CASES = Number(asked.cases ?? 100_000);
const SEED = Number(asked.seed ?? Math.floor(Math.random() * 2 ** 31));
/** What is stored is looked at after so many requests. */
const BATCH = 500;
const READERS_SHARE = 0.5;

const demo = (name: string) => readFileSync(path.join(ROOT, 'demo-data', name), 'utf8');
const TRIP = JSON.parse(demo('trip.json')) as object;
const SHELF = demo('shelf.csv');
const GPX = demo('ridge-route.gpx').split('\n');
/** A short track: a case is to try one thing, not to reckon with a thousand points. */
const SHORT_GPX = [...GPX.slice(0, 60), '</trkseg></trk></gpx>'].join('\n');
const FOODS =
  'name,water,protein,fat,carbohydrate,fibre,kcal,allergens,source\nLentils,11,24,1.5,50,11,340,none,own\nRice,12;7,0.6,79,,,gluten,\n';

console.log(`${CASES} cases, seed ${SEED}`);
let failures = 0;
const fail = (what: string, sent: unknown) => {
  failures += 1;
  process.stdout.write(`✗ ${what}\n  ${JSON.stringify(sent)?.slice(0, 600)}\n`);
};

let slowest = { seconds: 0, sent: undefined as unknown };

/** Runs a case; one that throws has failed. */
async function attempt(sent: unknown, work: () => unknown): Promise<void> {
  const before = process.threadCpuUsage();
  try {
    await work();
  } catch (error) {
    fail(error instanceof Error ? (error.stack ?? error.message) : String(error), sent);
  }
  const { user, system } = process.threadCpuUsage(before);
  const seconds = (user + system) / 1e6;
  if (seconds > slowest.seconds) slowest = { seconds, sent };
}

const sample = <T>(arbitrary: fc.Arbitrary<T>, numRuns: number, seed: number): T[] =>
  fc.sample(arbitrary, { numRuns, seed });

const bytes = (written: string) => new TextEncoder().encode(written);
const refuses = async (kind: new (...given: never[]) => Error, work: () => unknown) => {
  try {
    await work();
  } catch (error) {
    if (!(error instanceof kind)) throw error;
  }
};

const READERS: Readonly<Record<string, readonly [fc.Arbitrary<string>, (sent: string) => unknown]>> = {
  'shelf CSV': [
    changed([SHELF, SHELF.replaceAll(',', ';'), demo('shelf-with-errors.csv')]),
    (sent) =>
      refuses(UnreadableFile, async () => {
        const file = await openCsv(async function* () {
          yield bytes(sent);
        });
        const mapping = guessMapping(file);
        for await (const rows of judgeRows(file, { mapping, currency: 'EUR', shelf: new Map() })) void rows;
      }),
  ],
  GPX: [
    changed([SHORT_GPX, SHORT_GPX.replace('<gpx', '<!DOCTYPE x [<!ENTITY a "aaaa">]><gpx')]),
    (sent) => refuses(RouteError, () => routeFromGpx(sent)),
  ],
  'trip JSON': [changedJson([TRIP]), (sent) => readJsonFile(bytes(sent), Trip)],
  'settings JSON': [changedJson([Settings.parse({})]), (sent) => readJsonFile(bytes(sent), Settings)],
  'foods CSV': [changed([FOODS]), (sent) => refuses(UnreadableFile, () => readFoodsCsv(bytes(sent)))],
};

const perReader = Math.ceil((CASES * READERS_SHARE) / Object.keys(READERS).length);
for (const [name, [arbitrary, read]] of Object.entries(READERS)) {
  for (const sent of sample(arbitrary, perReader, SEED)) await attempt({ name, sent }, () => read(sent));
  console.log(`${name}: ${perReader} cases`);
}

// The endpoints, from the routes on disk, so that none is forgotten.
if (!ensureBuilt()) throw new Error('The build failed.');
const folder = mkdtempSync(path.join(tmpdir(), 'ridgelarder-fuzz-'));
process.env['RIDGELARDER_DATA'] = folder;
const logged: string[] = [];
console.error = (...words: unknown[]) => void logged.push(words.map(String).join(' '));
const app = await serve({ port: 0, names: [], hasPassphrase: false });
const tell = (line: string) => process.stdout.write(`${line}\n`);

type Endpoint = {
  readonly route: string;
  readonly methods: readonly string[];
  readonly actions: readonly string[];
};
const ENDPOINTS = Object.values(
  Object.groupBy(globSync('src/routes/**/+{page.svelte,page.server.ts,server.ts}', { cwd: ROOT }), (file) =>
    file.slice('src/routes'.length, file.lastIndexOf('/+')),
  ),
).map((files = []): Endpoint => {
  const code = files.map((file) => readFileSync(path.join(ROOT, file), 'utf8')).join('\n');
  const methods = Array.from(
    code.matchAll(/export const (GET|POST|PUT|PATCH|DELETE)\b/g),
    ([, method = '']) => method,
  );
  const actions = Array.from(code.matchAll(/\?\/(\w+)/g), ([, action = '']) => action);
  const hasActions = code.includes('export const actions');
  const isPage = files.some((file) => file.includes('+page'));
  return {
    route: files[0]?.slice('src/routes'.length, files[0].lastIndexOf('/+')) || '/',
    methods: [...(isPage ? ['GET'] : []), ...(hasActions ? ['POST'] : []), ...methods],
    actions: hasActions ? ['default', ...actions] : [],
  };
});

/** What stands for `[id]` and `[code]`; gathered anew after each batch. */
let ids: string[] = [];
let forms: Form[] = [];

async function gather(): Promise<void> {
  const links = new Set([
    '/',
    '/shelf',
    '/shelf/new',
    '/shelf/new/details',
    '/shelf/import',
    '/shelf/pictures',
    '/shelf/labels',
    '/trips',
    '/trips/new',
    '/trips/compare',
    '/kitchen',
    '/kitchen/equipment',
    '/kitchen/foods?q=rice',
    '/kitchen/recipes/new',
    '/kitchen/batches/new',
    '/settings',
    '/settings/access',
    '/settings/learned',
    '/bin',
    '/sign-in',
  ]);
  const seen = new Set<string>();
  forms = [];
  for (const address of links) {
    const kind = address.replace(
      /[0-9a-f]{8}-[0-9a-f-]{27}|(?<=^\/shelf\/)(?!import|new|labels|pictures)[^/?]+/g,
      '…',
    );
    if (seen.has(kind)) continue;
    seen.add(kind);
    const html = await (await fetch(app.origin + address, { headers: { accept: 'text/html' } })).text();
    forms.push(...formsOf(html, address));
    for (const [, href = ''] of html.matchAll(/href="(\/[^"#]*)"/g))
      if (links.size < 200 && !href.startsWith('/_app')) links.add(href.replaceAll('&amp;', '&'));
  }
  ids = [
    ...new Set(
      [...links].flatMap(
        (link) => /^\/(?:trips|kitchen\/\w+|shelf(?:\/import)?)\/([^/?]+)/.exec(link)?.slice(1) ?? [],
      ),
    ),
  ];
}

type Case = {
  readonly which: number;
  readonly how: 'form' | 'route' | 'json';
  readonly swaps: readonly (readonly [number, string])[];
  readonly words: string;
  readonly query: string;
  readonly json: string;
  readonly file: string;
  readonly known: boolean;
};
const cases = fc.record({
  which: fc.nat(),
  how: fc.constantFrom('form', 'form', 'form', 'route', 'route', 'json'),
  swaps: fc.array(fc.tuple(fc.nat(), text), { maxLength: 3 }),
  words: text,
  query: text,
  json: changedJson([
    TRIP,
    { trip: TRIP },
    {
      notes: [
        {
          id: '3b241101-e2bb-4255-8caf-4136c566a962',
          at: '2027-07-05T10:00:00Z',
          kind: 'eaten',
          code: 'B01',
          pouches: 1,
        },
      ],
    },
  ]),
  file: fc.oneof(changed([SHELF, FOODS, SHORT_GPX, JSON.stringify(TRIP)]), text),
  known: fc.boolean(),
}) satisfies fc.Arbitrary<Case>;

function requestFor({ which, how, swaps, words, query, json, file, known }: Case): [string, RequestInit] {
  const headers: Record<string, string> = {
    origin: app.origin,
    accept: which % 3 === 0 ? 'application/json' : 'text/html',
    ...(which % 5 === 0 && { 'accept-language': 'de' }),
  };
  const endpoint = ENDPOINTS[which % ENDPOINTS.length]!;
  const address = endpoint.route.replaceAll(/\[\w+\]/g, () =>
    encodeURIComponentSafe(
      known || words === '' || words === '.' || words === '..'
        ? (ids[which % Math.max(ids.length, 1)] ?? 'x')
        : words,
    ),
  );
  const form = forms[which % Math.max(forms.length, 1)];
  if (how === 'form' && form) {
    const fields = form.fields.map(([name, value]): [string, string] => [name, value]);
    for (const [place, put] of swaps) {
      const field = fields[place % Math.max(fields.length, 1)];
      if (place % 13 === 0) fields.push([put, put]);
      else if (place % 17 === 0) fields.splice(place % fields.length, 1);
      else if (field) field[place % 19 === 0 ? 0 : 1] = put;
    }
    if (!form.isMultipart)
      return [
        form.action,
        {
          method: 'POST',
          headers: { ...headers, 'content-type': 'application/x-www-form-urlencoded' },
          body: new URLSearchParams(
            fields.map(([name, value]) => [name.toWellFormed(), value.toWellFormed()]),
          ).toString(),
        },
      ];
    const body = new FormData();
    for (const [name, value] of fields) if (name !== 'file') body.append(name, value);
    body.append('file', new File([file], words.toWellFormed() || 'x'));
    return [form.action, { method: 'POST', headers, body }];
  }
  const method = endpoint.methods[which % Math.max(endpoint.methods.length, 1)] ?? 'GET';
  const action = endpoint.actions[which % Math.max(endpoint.actions.length, 1)];
  const search =
    method === 'POST' && action !== undefined
      ? action === 'default'
        ? ''
        : `?/${action}`
      : query === ''
        ? ''
        : `?${new URLSearchParams(swaps.map(([place, put]) => [['q', 'change', 'paper', 'sort', 'a', 'b', 'to', 'code', 'lots', 'day', query][place % 11] ?? 'q', put.toWellFormed()])).toString()}`;
  if (method === 'GET') return [address + search, { headers }];
  if (how === 'json' || action === undefined)
    return [
      address + search,
      { method, headers: { ...headers, 'content-type': 'application/json' }, body: json.toWellFormed() },
    ];
  return [
    address + search,
    {
      method,
      headers: { ...headers, 'content-type': 'application/x-www-form-urlencoded' },
      body: new URLSearchParams(
        swaps.map(([, put]) => [words.toWellFormed(), put.toWellFormed()]),
      ).toString(),
    },
  ];
}

const encodeURIComponentSafe = (words: string) => encodeURIComponent(words.toWellFormed());

async function ask(sent: Case): Promise<void> {
  const [address, init] = requestFor(sent);
  const response = await fetch(app.origin + address, { ...init, redirect: 'manual' });
  const answer = await response.text();
  if (response.status >= 500 && response.status !== 503)
    throw new Error(
      `${init.method ?? 'GET'} ${address}: ${response.status} ${logged.splice(0).join(' ').slice(0, 900)} ${String(init.body).slice(0, 300)} ${answer.slice(0, 80)}`,
    );
  if ('polluted' in {}) throw new Error(`${address}: Object.prototype was changed`);
}

/** The ledger adds up, and every record is of its schema. */
async function checkStored(): Promise<void> {
  const db = await openDatabase(folder);
  await checkData(db, 'the data').finally(() => db.destroy());
}

const requests = sample(cases, Math.floor(CASES * (1 - READERS_SHARE)), SEED);
for (let done = 0; done < requests.length; done += BATCH) {
  if ((await (await fetch(`${app.origin}/shelf/lots.json`)).text()).length < 100) await fillDemo(app.origin);
  await gather();
  const batch = requests.slice(done, done + BATCH);
  for (const sent of batch) await attempt(requestFor(sent), () => ask(sent));
  await checkStored().catch((error: unknown) =>
    fail(`what is stored is damaged: ${String(error)}`, { from: done, to: done + BATCH }),
  );
}
tell(`endpoints: ${requests.length} requests to ${ENDPOINTS.length} routes`);
await app.stop();
rmSync(folder, { recursive: true, force: true });
tell(
  `Slowest: ${slowest.seconds.toFixed(2)} s of processor time for ${JSON.stringify(slowest.sent)?.slice(0, 200)}`,
);
tell(`${failures === 0 ? 'All is well.' : `${failures} cases failed.`} Seed ${SEED}.`);
const areLargestWell = asked.largest ? run('node tests/fuzz/largest.ts') : true;
process.exit(failures === 0 && areLargestWell ? 0 : 1);
