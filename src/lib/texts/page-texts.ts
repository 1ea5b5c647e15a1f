import { language, type Language } from './languages.ts';
import { useCatalog, type Catalog } from './say.ts';

/*
 * What a page says in another language than English is a file of its own, made at the build of the literals in the page's scripts (`tooling/page-texts.ts`). It is
 * there before the page is shown by script.
 */

/** Where those files are. */
export const TEXTS = '/_app/immutable/texts/';
/** All texts of a language, for a page that says one which is not in its own file. */
export const WHOLE = '/all of them';

/**
 * @param version of the build
 * @param page a route's id; `null` where there is no such page
 * @returns where the texts of a page are
 */
export const textsAddress = (version: string, spoken: Language, page: string | null): string =>
  `${TEXTS}${version}/${spoken}/${page === null ? 'no-page' : fileName(page)}.json`;

const fileName = (page: string): string =>
  page.slice(1).replace(/[[\]]/g, '').replace(/[/ ]/g, '-') || 'start';

const known = new Map<string, string>();
const loads = new Map<string, Promise<void>>();

/**
 * Loads texts, if they have not been loaded yet.
 *
 * @throws Error where they cannot be had
 */
export async function loadTexts(address: string): Promise<void> {
  let load = loads.get(address);
  if (!load) loads.set(address, (load = fetchTexts(address)));
  try {
    await load;
  } catch (error) {
    loads.delete(address);
    throw error;
  }
}

async function fetchTexts(address: string): Promise<void> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`The texts of ${address} could not be loaded (${response.status}).`);
  for (const [source, said] of Object.entries((await response.json()) as Catalog)) known.set(source, said);
}

/** Says everything by the texts that were loaded; one that is not among them is reported, and all are loaded then. */
export function usePageTexts(version: string): void {
  const spoken = language();
  useCatalog(spoken, (source) => {
    const said = known.get(source);
    if (said === undefined) {
      console.error(`The texts of this page do not have ${JSON.stringify(source)}.`);
      known.set(source, '');
      void loadTexts(textsAddress(version, spoken, WHOLE)).catch(() => undefined);
    }
    return said;
  });
}
