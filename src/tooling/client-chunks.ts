import { copyFileSync, existsSync, globSync, readFileSync } from 'node:fs';
import path from 'node:path';
import type { Plugin, Rollup } from 'vite';
import { ROOT } from './run.ts';

/** One file of JavaScript that browsers may load. */
export type ClientChunk = {
  /** Its place below build/client. */
  readonly file: string;
  /** The modules in it, as paths from the project's folder. */
  readonly modules: readonly string[];
  /** Files that the browser loads with it. */
  readonly imports: readonly string[];
  /** Files that it loads only when they are asked for. */
  readonly later: readonly string[];
};

const EMITTED = '.vite/chunks.json';
const BUILT = path.join(ROOT, '.svelte-kit/output/client', EMITTED);
const KEPT = path.join(ROOT, 'build/.chunks.json');
const ROUTES = 'src/routes';
/** The start of the app, which knows all pages. */
const ENTRY = '_app/immutable/entry/';

/** The components of all pages, below `src/routes`. */
export const PAGES: readonly string[] = globSync('**/+page.svelte', { cwd: path.join(ROOT, ROUTES) }).map(
  (file) => file.replaceAll(path.sep, '/'),
);

/** @returns the id of a page's route: "/trips/[id]/menu" */
export const routeOf = (page: string): string => `/${path.posix.dirname(page)}`.replace(/\.$/, '');

/** For Vite: notes which module of the client came into which file. */
export function noteClientChunks(): Plugin {
  return {
    name: 'note-client-chunks',
    applyToEnvironment: ({ name }) => name === 'client',
    generateBundle(_, bundle) {
      this.emitFile({ type: 'asset', fileName: EMITTED, source: JSON.stringify(chunksOf(bundle)) });
    },
  };
}

export const chunksOf = (bundle: Rollup.OutputBundle): readonly ClientChunk[] =>
  Object.values(bundle).flatMap((output): ClientChunk[] =>
    output.type === 'chunk'
      ? [
          {
            file: output.fileName,
            modules: output.moduleIds.map((id) => path.relative(ROOT, id).replaceAll(path.sep, '/')),
            imports: output.imports,
            later: output.fileName.startsWith(ENTRY) ? [] : output.dynamicImports,
          },
        ]
      : [],
  );

/**
 * @param page its component below `src/routes`; `undefined` for the answer where there is no page
 * @returns what the browser loads for the first view of a page: the start of the app, the layouts and the page, with all that these import
 * @throws where the build has no such page
 */
export function firstLoad(chunks: readonly ClientChunk[], page: string | undefined): readonly ClientChunk[] {
  const folders = (page ?? '').split('/').map((_, depth, parts) => parts.slice(0, depth).join('/'));
  const components = [
    ...folders.map((folder) => path.posix.join(folder, '+layout.svelte')),
    '+error.svelte',
    page ?? '',
  ].map((file) => `${ROUTES}/${file}`);
  const loaded = withImports(
    chunks,
    chunks.filter(
      ({ file, modules }) => file.startsWith(ENTRY) || modules.some((module) => components.includes(module)),
    ),
    ({ imports }) => imports,
  );
  if (page !== undefined && !loaded.some(({ modules }) => modules.includes(`${ROUTES}/${page}`)))
    throw new Error(`The build holds nothing of ${ROUTES}/${page}.`);
  return loaded;
}

/** @returns files, and those that they load when asked to */
export const alsoLater = (
  chunks: readonly ClientChunk[],
  first: readonly ClientChunk[],
): readonly ClientChunk[] => withImports(chunks, first, ({ imports, later }) => [...imports, ...later]);

function withImports(
  chunks: readonly ClientChunk[],
  first: readonly ClientChunk[],
  importsOf: (chunk: ClientChunk) => readonly string[],
): readonly ClientChunk[] {
  const byFile = new Map(chunks.map((chunk) => [chunk.file, chunk]));
  const loaded = new Set<ClientChunk>();
  const waiting = [...first];
  for (let chunk = waiting.pop(); chunk; chunk = waiting.pop()) {
    if (loaded.has(chunk)) continue;
    loaded.add(chunk);
    waiting.push(...importsOf(chunk).flatMap((file) => byFile.get(file) ?? []));
  }
  return [...loaded];
}

/** Puts the note beside the build that it is about. */
export const keepClientChunks = (): void => copyFileSync(BUILT, KEPT);

/** @throws where the build was made without this note */
export function readClientChunks(): readonly ClientChunk[] {
  if (!existsSync(KEPT)) throw new Error(`There is no ${KEPT}. Delete the folder build, and try again.`);
  return JSON.parse(readFileSync(KEPT, 'utf8'));
}
