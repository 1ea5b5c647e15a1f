import { globSync } from 'node:fs';
import path from 'node:path';
import { ROOT } from './run.ts';

/** Paths of what the demo holds, for pages of one thing. */
export type Things = {
  readonly trip: string;
  /** A trip for which the shelf does not hold enough. */
  readonly hungryTrip: string;
  readonly recipe: string;
  readonly drying: string;
  readonly sealed: string;
  readonly upload: string;
  readonly backup: string;
};

/** An address in the QR codes that does not change with the port. */
export const LABELS = '/shelf/labels?code=C2-1&code=D01&address=http%3A%2F%2F192.168.1.20%3A4810';

/**
 * @param routes patterns of all pages, such as `/trips/[id]/menu`
 * @returns the address of every page there is, each with something of the demo in it
 * @throws where it knows nothing to show at one
 */
export function everyAddress(things: Things, routes: readonly string[] = pageRoutes()): string[] {
  const filled: Readonly<Record<string, string>> = {
    '/kitchen/batches/[id]': things.drying,
    '/kitchen/recipes/[id]': things.recipe,
    '/settings/backups/[name]': things.backup,
    '/shelf/[code]': '/shelf/D01',
    '/shelf/import/[id]': things.upload,
    '/shelf/labels': LABELS,
    '/trips/[id]': things.trip,
  };
  return routes.flatMap((route) => {
    const known = Object.keys(filled).find((start) => route === start || route.startsWith(`${start}/`));
    const address = known ? `${filled[known]}${route.slice(known.length)}` : route;
    if (address.includes('['))
      throw new Error(`Nothing to show is known for ${route}; give it to the list in every-address.ts.`);
    return address === things.drying ? [address, things.sealed] : [address];
  });
}

/** @returns the pattern of every page in the sources. */
export const pageRoutes = (): string[] =>
  globSync('**/+page.svelte', { cwd: path.join(ROOT, 'src/routes') })
    .map((file) => `/${path.posix.dirname(file.replaceAll(path.sep, '/'))}`.replace(/^\/\.$/, '/'))
    .toSorted();
