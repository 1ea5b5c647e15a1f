import { globSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { gzipSync } from 'node:zlib';
import { ensureBuilt } from './build.ts';
import { readClientChunks, type ClientChunk } from './client-chunks.ts';
import { ROOT } from './run.ts';

const LIMIT_KB = 80;
const LIMITS_KB: Readonly<Record<string, number>> = { '/shelf': 65 };
/** What no page may begin with: it is loaded when it is asked for, or runs on the server. */
const NOT_AT_FIRST = [
  /node_modules\/zod\//,
  /node_modules\/chart\.js\//,
  /node_modules\/highs\//,
  /src\/lib\/(?:planning\/optimiser|menu-search)\//,
];

const ROUTES = path.join(ROOT, 'src/routes');
const FIRST_OF_ALL = '_app/immutable/entry/';

/**
 * Measures what the browser loads for the first view of each page of the build: the start of the app, the layouts and the page, with
 * all that these import. Prints the figures, and what is wrong with them.
 *
 * @returns whether all is within its limits
 */
export function checkSize(): boolean {
  if (!ensureBuilt()) return false;
  const chunks = readClientChunks();
  const pages = globSync('**/+page.svelte', { cwd: ROUTES })
    .map((file) => file.replaceAll(path.sep, '/'))
    .map((file) => {
      const first = firstLoad(chunks, file);
      return {
        route: `/${path.posix.dirname(file)}`.replace(/\.$/, ''),
        kB: first.reduce((sum, chunk) => sum + gzippedKB(chunk), 0),
        unwanted: first.flatMap(({ modules }) =>
          modules.filter((module) => NOT_AT_FIRST.some((pattern) => pattern.test(module))),
        ),
      };
    })
    .toSorted((a, b) => b.kB - a.kB);
  console.log('JavaScript of the first view, kB (1000 bytes) after gzip:');
  for (const { route, kB } of pages) console.log(`${kB.toFixed(1).padStart(8)}  ${route}`);

  const problems = pages.flatMap(({ route, kB, unwanted }) => [
    ...overLimit(route, kB),
    ...unwanted.map((module) => `${route} begins with ${module}; import it when it is needed.`),
  ]);
  for (const problem of problems) console.error(problem);
  return problems.length === 0;
}

function overLimit(route: string, kB: number): string[] {
  const limitKB = LIMITS_KB[route] ?? LIMIT_KB;
  return kB > limitKB
    ? [`${route} begins with ${kB.toFixed(1)} kB; at most ${limitKB} kB are let through.`]
    : [];
}

function firstLoad(chunks: readonly ClientChunk[], page: string): readonly ClientChunk[] {
  const byFile = new Map(chunks.map((chunk) => [chunk.file, chunk]));
  const layouts = page
    .split('/')
    .map((_, depth, parts) => [...parts.slice(0, depth), '+layout.svelte'].join('/'))
    .map((file) => `src/routes/${file}`);
  const components = [...layouts, `src/routes/${page}`];
  const waiting = chunks.filter(
    ({ file, modules }) =>
      file.startsWith(FIRST_OF_ALL) || modules.some((module) => components.includes(module)),
  );
  const loaded = new Set<ClientChunk>();
  for (let chunk = waiting.pop(); chunk; chunk = waiting.pop()) {
    if (loaded.has(chunk)) continue;
    loaded.add(chunk);
    waiting.push(...chunk.imports.flatMap((file) => byFile.get(file) ?? []));
  }
  if (![...loaded].some(({ modules }) => modules.includes(`src/routes/${page}`)))
    throw new Error(`The build holds nothing of src/routes/${page}.`);
  return [...loaded];
}

const gzippedKB = ({ file }: ClientChunk): number =>
  gzipSync(readFileSync(path.join(ROOT, 'build/client', file)), { level: 9 }).length / 1000;
