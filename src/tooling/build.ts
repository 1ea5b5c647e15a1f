import { createHash } from 'node:crypto';
import { existsSync, globSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { keepClientChunks } from './client-chunks.ts';
import { ROOT, run } from './run.ts';

/** What the build is made from. */
const SOURCES = [
  'src/**/*.{ts,js,svelte,html,css,json}',
  'docs/method*.md',
  'static/**/*',
  'demo-data/**/*',
  'package-lock.json',
  '{vite,svelte}.config.{ts,js}',
  'tsconfig.json',
];
const STAMP = path.join(ROOT, 'build/.sources');

function sourcesHash(): string {
  const hash = createHash('sha256');
  for (const entry of globSync(SOURCES, { cwd: ROOT, withFileTypes: true }).toSorted(byPath))
    if (entry.isFile() && !entry.name.includes('.test.'))
      hash.update(pathOf(entry)).update(readFileSync(pathOf(entry)));
  return hash.digest('hex');
}

type Entry = { readonly parentPath: string; readonly name: string };
const pathOf = (entry: Entry) => path.join(entry.parentPath, entry.name);
const byPath = (a: Entry, b: Entry) => (pathOf(a) < pathOf(b) ? -1 : 1);

/**
 * Builds the app into build/ unless what is there was made from these very sources.
 *
 * @returns whether a build of these sources is there now
 */
export function ensureBuilt(): boolean {
  const hash = sourcesHash();
  if (existsSync(STAMP) && readFileSync(STAMP, 'utf8') === hash) return true;
  console.log('Building the app…');
  // Asked for from within a test, it would else be a build for tests, which is larger.
  if (!run('vite build --logLevel error', { NODE_ENV: 'production' })) return false;
  keepClientChunks();
  writeFileSync(STAMP, hash);
  return true;
}
