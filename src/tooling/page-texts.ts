import type { Plugin } from 'vite';
import { catalogOf, translationInto } from '../lib/texts/catalogs.ts';
import { ALL_LANGUAGES } from '../lib/texts/languages.ts';
import { TEXTS, textsAddress, WHOLE } from '../lib/texts/page-texts.ts';
import { alsoLater, chunksOf, firstLoad, PAGES, routeOf, type ClientChunk } from './client-chunks.ts';

/** Every text has a key, and a translation in each language that is whole. */
const SOURCES = new Set(ALL_LANGUAGES.flatMap((language) => Object.keys(catalogOf(language))));

/**
 * For Vite: writes what each page says in each language into a file, which the browser loads with the page. What a page says are the texts among the literals of its
 * scripts, those that it may load later included.
 */
export function pageTexts(): Plugin {
  let version = '';
  return {
    name: 'page-texts',
    configResolved: ({ define }) => {
      version = JSON.parse(String(define?.['__SVELTEKIT_APP_VERSION__'] ?? '""'));
    },
    configureServer: ({ middlewares }) => {
      middlewares.use(TEXTS, ({ url = '' }, response) => {
        const language = ALL_LANGUAGES.find((one) => url.includes(`/${one}/`)) ?? 'en';
        response.setHeader('content-type', 'application/json').end(textsIn(language, SOURCES));
      });
    },
    generateBundle: {
      order: 'post',
      handler(_, bundle) {
        if (this.environment.name !== 'client') return;
        const chunks = chunksOf(bundle);
        const said = new Map(
          Object.values(bundle).flatMap((output) =>
            output.type === 'chunk'
              ? [[output.fileName, textsAmong(literalsOf(this.parse(output.code)))] as const]
              : [],
          ),
        );
        const emit = (page: string | null, sources: ReadonlySet<string>) => {
          for (const language of ALL_LANGUAGES)
            if (language !== 'en')
              this.emitFile({
                type: 'asset',
                fileName: textsAddress(version, language, page).slice(1),
                source: textsIn(language, sources),
              });
        };
        const saidBy = (files: readonly ClientChunk[]) =>
          new Set(files.flatMap(({ file }) => [...(said.get(file) ?? [])]));
        for (const page of PAGES) emit(routeOf(page), saidBy(alsoLater(chunks, firstLoad(chunks, page))));
        emit(null, saidBy(alsoLater(chunks, firstLoad(chunks, undefined))));
        emit(WHOLE, SOURCES);
      },
    },
  };
}

const textsAmong = (literals: readonly string[]): readonly string[] =>
  literals.filter((literal) => SOURCES.has(literal));

/** @returns a catalog as JSON; a text that the language does not have yet is empty in it, and said in English */
function textsIn(language: (typeof ALL_LANGUAGES)[number], sources: ReadonlySet<string>): string {
  const translate = translationInto(language);
  return JSON.stringify(
    Object.fromEntries([...sources].sort().map((source) => [source, shorter(source, translate(source))])),
  );
}

/** The browser says English by itself. */
const shorter = (source: string, said: string | undefined): string => (said === source ? '' : (said ?? ''));

function literalsOf(node: unknown): string[] {
  if (typeof node !== 'object' || node === null) return [];
  const { type, value } = node as { type?: string; value?: unknown };
  if (type === 'Literal') return typeof value === 'string' ? [value] : [];
  if (type === 'TemplateElement') return [(value as { cooked?: string }).cooked ?? ''];
  return Object.values(node).flatMap(literalsOf);
}
