/*
 * `npm run check -- imports`: what of the sources may import what. Each room of `src/lib` imports only from those before it, and no file comes back to itself,
 * imports of types included. ESLint holds what may be imported inside `planning` (eslint.config.js).
 */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import ts from 'typescript';
import { pathToFileURL } from 'node:url';
import { ROOT } from './run.ts';

/** The rooms from the lowest to the highest. `lib` are the files that lie in `src/lib` itself, `src` those in `src`. */
const ROOMS = [
  'planning',
  'texts',
  'presentation',
  'lib',
  'shelf-csv',
  'foods',
  'photos',
  'recipe-text',
  'workbook',
  'menu-search',
  'application',
  'prose',
  'offline',
  'server',
  'kitchen-views',
  'trip-views',
  'forms',
  'label-sheets',
  'kitchen-forms',
  'trip-forms',
  'reasons',
  'components',
  'routes',
  'src',
];

/** Circles that are still there, as their files under `src/lib` in order; one that is gone has to go from here too. */
const STILL_ROUND: readonly string[] = ['planning/menu/fillings.ts, planning/menu/menu-model.ts'];

/** By file, relative to the root with slashes: the files that it imports. */
export type ImportGraph = ReadonlyMap<string, ReadonlySet<string>>;

/** @returns what imports what among the sources below `src` that run in the app: no tests, no tooling. */
export function importGraph(root: string): ImportGraph {
  const files = readdirSync(path.join(root, 'src'), { recursive: true, encoding: 'utf8' })
    .map((file) => `src/${file.replaceAll('\\', '/')}`)
    .filter((file) => /\.(ts|svelte)$/.test(file) && !/\.test\.ts$|\.tmp\.ts$|^src\/tooling\//.test(file));
  const known = new Set(files);
  const found = (from: string, specifier: string): string | undefined => {
    const at = specifier.startsWith('$lib/')
      ? `src/lib/${specifier.slice(5)}`
      : specifier.startsWith('.')
        ? path.posix.join(path.posix.dirname(from), specifier)
        : undefined;
    return at === undefined
      ? undefined
      : [at, `${at}.ts`, `${at}.svelte.ts`, `${at}/index.ts`].find((name) => known.has(name));
  };
  return new Map(
    files.map((file) => [
      file,
      new Set(
        specifiersIn(readFileSync(path.join(root, file), 'utf8'), file.endsWith('.svelte')).flatMap(
          (specifier) => found(file, specifier) ?? [],
        ),
      ),
    ]),
  );
}

function specifiersIn(source: string, isSvelte: boolean): string[] {
  const scripts = isSvelte
    ? Array.from(source.matchAll(/<script[^>]*>([\s\S]*?)<\/script>/g), ([, script = '']) => script)
    : [source];
  return scripts.flatMap((script) =>
    ts.preProcessFile(script, true, true).importedFiles.map(({ fileName }) => fileName),
  );
}

/** @returns the groups of files that import each other in a circle, each sorted. */
export function circlesIn(graph: ImportGraph): string[][] {
  const order = new Map<string, number>();
  const low = new Map<string, number>();
  const open: string[] = [];
  const circles: string[][] = [];
  const visit = (file: string): void => {
    order.set(file, order.size);
    low.set(file, order.get(file)!);
    open.push(file);
    for (const other of graph.get(file) ?? []) {
      if (!order.has(other)) {
        visit(other);
        low.set(file, Math.min(low.get(file)!, low.get(other)!));
      } else if (open.includes(other)) low.set(file, Math.min(low.get(file)!, order.get(other)!));
    }
    if (low.get(file) !== order.get(file)) return;
    const circle = open.splice(open.indexOf(file));
    if (circle.length > 1) circles.push(circle.sort());
  };
  for (const file of graph.keys()) if (!order.has(file)) visit(file);
  return circles;
}

/** @returns the imports of a room from one that is not before it. */
export function importsUpwards(graph: ImportGraph, rooms: readonly string[]): [from: string, to: string][] {
  return [...graph].flatMap(([file, imported]) =>
    [...imported].flatMap((other): [string, string][] => {
      const [from, to] = [roomOf(file), roomOf(other)];
      // What planning may import, ESLint holds.
      return from !== to && from !== 'planning' && rooms.indexOf(to) >= rooms.indexOf(from)
        ? [[file, other]]
        : [];
    }),
  );
}

function roomOf(file: string): string {
  const [, top = '', ...below] = file.split('/');
  if (top !== 'lib') return below.length === 0 || top === 'service-worker' ? 'src' : top;
  return below.length === 1 ? 'lib' : below[0]!;
}

/** @returns what is against the rules, a line each. */
export function againstTheRules(root: string): string[] {
  const graph = importGraph(root);
  const short = (file: string) => file.replace(/^src\/lib\//, '');
  const upwards = importsUpwards(graph, ROOMS).map(([from, to]) => `${short(from)} → ${short(to)}`);
  const round = circlesIn(graph).map((circle) => circle.map(short).join(', '));
  const beyond = (found: readonly string[], still: readonly string[]) =>
    found.filter((line) => !still.includes(line));
  const missing = new Set([...graph.keys()].map(roomOf).filter((room) => !ROOMS.includes(room)));
  return [
    ...[...missing].map((room) => `The room ${room} has no place in ROOMS.`),
    ...upwards.map((line) => `Imports upwards: ${line}`),
    ...beyond(round, STILL_ROUND).map((line) => `Import each other: ${line}`),
    ...beyond(STILL_ROUND, round).map((line) => `No longer there, take it out of STILL_ROUND: ${line}`),
  ];
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const lines = againstTheRules(ROOT);
  console.log(lines.length > 0 ? lines.join('\n') : 'Imports look down, and none goes round.');
  process.exitCode = lines.length > 0 ? 1 : 0;
}
