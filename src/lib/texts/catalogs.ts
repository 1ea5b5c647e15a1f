/* The texts of all languages, as they stand in the folders beside this file. For the server and the tools: a browser loads what a page says. */
import { readdirSync, readFileSync } from 'node:fs';
import { inAmerican } from './american.ts';
import { ALL_LANGUAGES, type Language } from './languages.ts';
import { useCatalog, type Catalog, type Translate } from './say.ts';

/** Vite puts the files into what it builds; Node reads them where they are. */
const FILES: Readonly<Record<string, Catalog>> = import.meta.env
  ? import.meta.glob<Catalog>('./*/*.json', { eager: true, import: 'default' })
  : filesHere();

function filesHere(): Record<string, Catalog> {
  const here = new URL('.', import.meta.url);
  const paths = readdirSync(here, { recursive: true, encoding: 'utf8' }).filter((path) =>
    path.endsWith('.json'),
  );
  return Object.fromEntries(
    paths.map((path) => [
      `./${path.replaceAll('\\', '/')}`,
      JSON.parse(readFileSync(new URL(path.replaceAll('\\', '/'), here), 'utf8')) as Catalog,
    ]),
  );
}

/** @returns all texts of a language's folder. What stands in several rooms has its translation in one of them. */
export const catalogOf = (language: Language): Catalog =>
  Object.assign(
    {},
    ...Object.entries(FILES).flatMap(([path, catalog]) =>
      path.startsWith(`./${language}/`) ? [catalog] : [],
    ),
  );

/** @returns how a language's text is found; American English has few of its own, and else the British ones in its spelling. */
export function translationInto(language: Language): Translate {
  const catalog = catalogOf(language);
  if (language !== 'en-US') return (source) => catalog[source];
  const respelled = new Map<string, string>();
  return (source) => {
    let said = catalog[source] ?? respelled.get(source);
    if (said === undefined) respelled.set(source, (said = inAmerican(source)));
    return said;
  };
}

/** Gives every language its texts. */
export function useAllCatalogs(): void {
  for (const language of ALL_LANGUAGES)
    if (language !== 'en') useCatalog(language, translationInto(language));
}
