import { globSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { gzipSync } from 'node:zlib';
import { ensureBuilt } from './build.ts';
import type { Language } from '../lib/texts/languages.ts';
import { textsAddress } from '../lib/texts/page-texts.ts';
import { firstLoad, PAGES, readClientChunks, routeOf } from './client-chunks.ts';
import { ROOT } from './run.ts';

const LIMIT_KB = 80;
/** With the texts of another language, which come beside the scripts. */
const TRANSLATED_LIMIT_KB = 85;
const LIMITS_KB: Readonly<Record<string, number>> = { '/shelf': 65 };
const CLIENT = path.join(ROOT, 'build/client');
/** What no page may begin with: it is loaded when it is asked for, or runs on the server. */
const NOT_AT_FIRST = [
  /node_modules\/zod\//,
  /node_modules\/chart\.js\//,
  /node_modules\/highs\//,
  /src\/lib\/(?:planning\/optimiser|menu-search)\//,
];

/**
 * Measures what the browser loads for the first view of each page of the build: the start of the app, the layouts and the page, with
 * all that these import, and what it says. Prints the figures, and what is wrong with them.
 *
 * @returns whether all is within its limits
 */
export function checkSize(): boolean {
  if (!ensureBuilt()) return false;
  const chunks = readClientChunks();
  const pages = PAGES.map((page) => {
    const first = firstLoad(chunks, page);
    const route = routeOf(page);
    const kB = first.reduce((sum, { file }) => sum + gzippedKB(file), 0);
    return {
      route,
      kB,
      translatedKB: kB + Math.max(...textsOf(route).map(gzippedKB)),
      unwanted: first.flatMap(({ modules }) =>
        modules.filter((module) => NOT_AT_FIRST.some((pattern) => pattern.test(module))),
      ),
    };
  }).toSorted((a, b) => b.kB - a.kB);
  console.log(
    'JavaScript of the first view, and that with the largest of its translations, kB (1000 bytes) after gzip:',
  );
  for (const { route, kB, translatedKB } of pages)
    console.log(`${kB.toFixed(1).padStart(8)}${translatedKB.toFixed(1).padStart(8)}  ${route}`);

  const problems = pages.flatMap(({ route, kB, translatedKB, unwanted }) => [
    ...overLimit(route, kB, LIMITS_KB[route] ?? LIMIT_KB),
    ...overLimit(`${route} in another language`, translatedKB, TRANSLATED_LIMIT_KB),
    ...unwanted.map((module) => `${route} begins with ${module}; import it when it is needed.`),
  ]);
  for (const problem of problems) console.error(problem);
  return problems.length === 0;
}

const overLimit = (what: string, kB: number, limitKB: number): string[] =>
  kB > limitKB ? [`${what} begins with ${kB.toFixed(1)} kB; at most ${limitKB} kB are let through.`] : [];

/** @returns the files of a page's texts, one for each language that has them */
const textsOf = (route: string): readonly string[] =>
  globSync(textsAddress('*', '*' as Language, route).slice(1), { cwd: CLIENT });

const gzippedKB = (file: string): number =>
  gzipSync(readFileSync(path.join(CLIENT, file)), { level: 9 }).length / 1000;
