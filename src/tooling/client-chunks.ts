import { copyFileSync, existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import type { Plugin } from 'vite';
import { ROOT } from './run.ts';

/** One file of JavaScript that browsers may load. */
export type ClientChunk = {
  /** Its place below build/client. */
  readonly file: string;
  /** The modules in it, as paths from the project's folder. */
  readonly modules: readonly string[];
  /** Files that the browser loads with it. Those loaded only when asked for are not among them. */
  readonly imports: readonly string[];
};

const EMITTED = '.vite/chunks.json';
const BUILT = path.join(ROOT, '.svelte-kit/output/client', EMITTED);
const KEPT = path.join(ROOT, 'build/.chunks.json');

/** For Vite: notes which module of the client came into which file. */
export function noteClientChunks(): Plugin {
  return {
    name: 'note-client-chunks',
    applyToEnvironment: ({ name }) => name === 'client',
    generateBundle(_, bundle) {
      const chunks = Object.values(bundle).flatMap((output): ClientChunk[] =>
        output.type === 'chunk'
          ? [
              {
                file: output.fileName,
                modules: output.moduleIds.map((id) => path.relative(ROOT, id).replaceAll(path.sep, '/')),
                imports: output.imports,
              },
            ]
          : [],
      );
      this.emitFile({ type: 'asset', fileName: EMITTED, source: JSON.stringify(chunks) });
    },
  };
}

/** Puts the note beside the build that it is about. */
export const keepClientChunks = (): void => copyFileSync(BUILT, KEPT);

/** @throws where the build was made without this note */
export function readClientChunks(): readonly ClientChunk[] {
  if (!existsSync(KEPT)) throw new Error(`There is no ${KEPT}. Delete the folder build, and try again.`);
  return JSON.parse(readFileSync(KEPT, 'utf8'));
}
