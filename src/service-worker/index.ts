/*
 * Keeps what is wanted where there is no signal: the program's own files, and of the trips opened last the card, menu, loads and
 * packing lists.
 * Pages come from the server wherever it answers. Nothing but good answers to GET is kept, each version of the program has caches
 * of its own, and a new version takes over when it has all that the one before it had.
 */
import { build, files, version } from '$service-worker';
import {
  cardOf,
  DATA_SUFFIX,
  isOfThisVersion,
  keptAddresses,
  KEEPING_HEADER,
  KEPT_AT_HEADER,
  pageOf,
  TRIP_CACHES,
  tripOf,
  tripsToForget,
  type KeptAnswer,
  type KeptQuestion,
  type KeptTrip,
} from '../lib/offline/kept-trips.ts';
import { TEXTS } from '../lib/texts/page-texts.ts';
import { isLanguage, useCatalog, useLanguage, type Catalog, type Language } from '../lib/texts/say.ts';
import { offlinePage } from './offline-page.ts';

declare const self: ServiceWorkerGlobalScope;

const SHELL = `shell-${version}`;
const OWN_TRIPS = `${TRIP_CACHES}${version}`;
const TEXTS_IN_PAGE = new RegExp(String.raw`(?<=href=")${TEXTS}[^"]+`, 'g');
const SHELL_FILES = new Set([...build, ...files]);

/** A kept copy is shown when the server has not answered after this long: one bar of signal can take minutes to fail. */
const PATIENCE_MS = 8000;
/** Answers of a proxy whose server is not there. */
const NO_SERVER = [502, 503, 504];
const GONE = 404;
/** Where a browser is given another language. */
const LANGUAGE_PATH = '/language';

const catalogs = import.meta.glob<Catalog>('../lib/texts/*/offline.json', { eager: true, import: 'default' });
for (const [path, catalog] of Object.entries(catalogs)) {
  const language = path.split('/').at(-2);
  if (isLanguage(language)) useCatalog(language, catalog);
}

self.addEventListener('install', (event) => event.waitUntil(install()));
self.addEventListener('activate', (event) => event.waitUntil(activate()));
self.addEventListener('fetch', onFetch);
self.addEventListener('message', onMessage);

async function install(): Promise<void> {
  const shell = await caches.open(SHELL);
  await shell.addAll([...SHELL_FILES].map((file) => new Request(file, { cache: 'no-cache' })));
  for (const id of await keptTrips(TRIP_CACHES)) await keep(id);
  await self.skipWaiting();
}

async function activate(): Promise<void> {
  for (const name of await caches.keys()) if (![SHELL, OWN_TRIPS].includes(name)) await caches.delete(name);
  await self.clients.claim();
  // Pages that were open before there was a service worker.
  const open = await self.clients.matchAll({ type: 'window' });
  await Promise.all(open.map(({ url }) => keepSoon(tripOf(new URL(url).pathname))));
}

function onFetch(event: FetchEvent): void {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  if (request.method !== 'GET' || origin !== self.location.origin) return;
  if (SHELL_FILES.has(pathname)) event.respondWith(shellFile(request, pathname));
  else if (pathname.startsWith(TEXTS)) event.respondWith(pageTexts(pathname));
  else if (request.mode === 'navigate' || pathname.endsWith(DATA_SUFFIX)) {
    const answered = answer(event, pathname);
    event.respondWith(answered.then(({ response }) => response));
    event.waitUntil(
      answered.then(({ isFresh, response }) => {
        if (isFresh && pathname === LANGUAGE_PATH) return keepAllAnew();
        return isFresh && (response.ok || response.status === GONE) ? keepSoon(tripOf(pathname)) : undefined;
      }),
    );
  }
}

async function shellFile(request: Request, pathname: string): Promise<Response> {
  const shell = await caches.open(SHELL);
  return (await shell.match(pathname, { ignoreVary: true })) ?? fetch(request);
}

/** What a page says in another language: kept from the first time on, as it never changes within a version. */
async function pageTexts(pathname: string): Promise<Response> {
  const shell = await caches.open(SHELL);
  const kept = await shell.match(pathname, { ignoreVary: true });
  if (kept) return kept;
  const response = await fetch(pathname);
  if (response.ok) await shell.put(pathname, response.clone());
  return response;
}

type Answer = { readonly response: Response; readonly isFresh: boolean };

async function answer(event: FetchEvent, pathname: string): Promise<Answer> {
  const cache = await caches.open(OWN_TRIPS);
  const kept = await cache.match(pathname, { ignoreVary: true });
  const fresh = await fromServer(event.request, kept !== undefined);
  const client = event.resultingClientId || event.clientId;
  shownFrom.set(`${client} ${pageOf(pathname)}`, fresh ? undefined : kept?.headers.get(KEPT_AT_HEADER));
  if (fresh) return { response: fresh, isFresh: true };
  return { response: kept ?? (await notKept(pathname)), isFresh: false };
}

/** @returns `undefined` where there is no server, or where it is too slow while there is a copy to show */
async function fromServer(request: Request, hasCopy: boolean): Promise<Response | undefined> {
  const asked = fetch(request).catch(() => undefined);
  const response = await (hasCopy ? Promise.race([asked, after(PATIENCE_MS)]) : asked);
  return hasCopy && response && NO_SERVER.includes(response.status) ? undefined : response;
}

const after = (ms: number) => new Promise<undefined>((resolve) => setTimeout(resolve, ms, undefined));

async function notKept(pathname: string): Promise<Response> {
  // Refused its data, a running page goes there anew, and is then answered as below.
  if (pathname.endsWith(DATA_SUFFIX)) return Response.error();
  const cache = await caches.open(OWN_TRIPS);
  const cards = await Promise.all(
    (await keptTrips(OWN_TRIPS)).map(async (id) => {
      const card = await cache.match(cardOf(id), { ignoreVary: true });
      return { address: cardOf(id), html: (await card?.text()) ?? '' };
    }),
  );
  const spoken = languageOf(cards.map(({ html }) => html));
  useLanguage(() => spoken);
  return new Response(offlinePage(cards.map(linkTo)), {
    status: 503,
    headers: {
      'content-type': 'text/html; charset=utf-8',
      'content-security-policy': "default-src 'none'; img-src 'self'; style-src 'self'",
    },
  });
}

/** The title of a kept page is HTML already. */
function linkTo({ address, html }: { address: string; html: string }): string {
  const title = /<title>([^<]*)<\/title>/.exec(html)?.[1];
  return `<li><a href="${address}">${title ?? address}</a></li>`;
}

/** A service worker sees no cookies: it speaks as the pages do that it has kept, or else as the browser would ask for. */
function languageOf(pages: readonly string[]): Language {
  const ofPages = pages.map((html) => /<html lang="([\w-]+)"/.exec(html)?.[1]);
  const ofBrowser = navigator.languages.flatMap((tag) => [tag, tag.split('-')[0]]);
  return [...ofPages, ...ofBrowser].find(isLanguage) ?? 'en';
}

/** What each window was last shown of a page: since when a copy of it was kept, or that it came from the server. */
const shownFrom = new Map<string, string | null | undefined>();

function onMessage(event: ExtendableMessageEvent): void {
  const { pathname } = event.data as KeptQuestion;
  const client = event.source instanceof Client ? event.source.id : '';
  const answer: KeptAnswer = { keptAt: shownFrom.get(`${client} ${pathname}`) ?? undefined };
  event.ports[0]?.postMessage(answer);
}

/** Rounds of keeping that run, by trip; and the trips that were opened again meanwhile. */
const rounds = new Map<string, Promise<void>>();
const again = new Set<string>();

/** Keeps a trip as it is now: one round at a time, and one more for all that was opened during it. */
function keepSoon(id: string | undefined): Promise<void> {
  if (id === undefined) return Promise.resolve();
  const running = rounds.get(id);
  if (running) {
    again.add(id);
    return running;
  }
  const round = (async () => {
    do {
      again.delete(id);
      await keep(id).catch(() => undefined); // the network went: what was kept before stays
    } while (again.has(id));
    rounds.delete(id);
  })();
  rounds.set(id, round);
  return round;
}

/**
 * Asks for all pages of a trip and then keeps them together. A trip that is not there any more is forgotten.
 *
 * @throws TypeError where there is no network; nothing is changed then
 */
async function keep(id: string): Promise<void> {
  const keptAt = new Date().toISOString();
  const copies: [string, Response][] = [];
  for (const address of keptAddresses(id)) {
    const response = await fetch(address, { headers: { [KEEPING_HEADER]: 'yes' }, cache: 'no-store' });
    if (response.status === GONE) return forget(id);
    if (!response.ok || response.redirected) continue;
    const text = await response.text();
    if (!address.endsWith(DATA_SUFFIX) && !isOfThisVersion(text, SHELL_FILES)) return;
    for (const [texts] of text.matchAll(TEXTS_IN_PAGE)) await pageTexts(texts);
    const headers = new Headers(response.headers);
    headers.set(KEPT_AT_HEADER, keptAt);
    copies.push([address, new Response(text, { headers })]);
  }
  const cache = await caches.open(OWN_TRIPS);
  for (const [address, copy] of copies) await cache.put(address, copy);
  await forgetSurplus(cache);
}

/** In another language now. Those opened last come last, so that they are the last to be forgotten as before. */
async function keepAllAnew(): Promise<void> {
  const kept = await lastKept(await caches.open(OWN_TRIPS));
  for (const { id } of kept.sort((a, b) => (a.keptAt < b.keptAt ? -1 : 1))) await keepSoon(id);
}

async function forgetSurplus(cache: Cache): Promise<void> {
  await Promise.all(tripsToForget(await lastKept(cache)).map(forget));
}

async function lastKept(cache: Cache): Promise<KeptTrip[]> {
  const latest = new Map<string, string>();
  for (const request of await cache.keys()) {
    const id = tripOf(new URL(request.url).pathname);
    const keptAt = (await cache.match(request, { ignoreVary: true }))?.headers.get(KEPT_AT_HEADER);
    if (id && keptAt && keptAt > (latest.get(id) ?? '')) latest.set(id, keptAt);
  }
  return [...latest].map(([id, keptAt]) => ({ id, keptAt }));
}

async function forget(id: string): Promise<void> {
  const cache = await caches.open(OWN_TRIPS);
  await Promise.all(keptAddresses(id).map((address) => cache.delete(address, { ignoreVary: true })));
}

/** @returns trips in the caches whose name begins so */
async function keptTrips(cacheName: string): Promise<string[]> {
  const ids = new Set<string>();
  for (const name of await caches.keys()) {
    if (!name.startsWith(cacheName)) continue;
    for (const { url } of await (await caches.open(name)).keys())
      ids.add(tripOf(new URL(url).pathname) ?? '');
  }
  return [...ids].filter(Boolean);
}
