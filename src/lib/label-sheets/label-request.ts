import { FormReader, type RefusedForm } from '$lib/forms/read-form.ts';
import type { PouchLot } from '$lib/planning/model/pouch-lot.ts';
import type { UnitSystem } from '$lib/presentation/show.ts';
import { say } from '$lib/texts/say.ts';
import { OWN_SIZE, ownPaper, PAGES, PAPERS, perSheet, type Paper } from './papers.ts';

/** So many labels at once keep the page quick. */
export const MOST_LABELS = 500;

/** Which labels to print, on what. */
export type LabelRequest = {
  readonly lots: readonly { readonly lot: PouchLot; readonly copies: number }[];
  readonly paper: Paper;
  /** The first free place of the first sheet, from 1. */
  readonly from: number;
  /** Where a phone finds the shelf, without a slash at the end. */
  readonly address: string;
};

/** What is read from the address of the page: a request, or what was entered with what is wrong about it. */
export type ReadLabels = RefusedForm & {
  readonly request: LabelRequest | undefined;
  readonly paper: Paper;
  readonly chosen: readonly string[];
};

/** @returns the paper that comes first where none is asked for. */
const usualPaper = (unitSystem: UnitSystem): Paper =>
  PAPERS.find(({ id }) => id === (unitSystem === 'us' ? 'letter-2x4' : 'a4-2x4-whole')) ?? PAPERS[0];

/**
 * Reads `?code=D01&code=D02&paper=…&from=1&copies=pouches&address=…`, as links and the form of the page write it. What is left out
 * takes its usual value: every free place, a label for each pouch at home, the address of the request.
 *
 * @param origin where the page itself was asked for
 */
export function readLabels(
  params: URLSearchParams,
  lots: readonly PouchLot[],
  unitSystem: UnitSystem,
  origin: string,
): ReadLabels {
  const form = new FormData();
  for (const [name, value] of params) form.append(name, value);
  const read = new FormReader(form, unitSystem);
  const wrong = (field: string, message: string) => read.add([{ field, message }]);
  const wholeNumber = (name: string, most: number): number => {
    const value = read.number(name);
    if (value === undefined) return 1;
    if (!Number.isInteger(value) || value < 1 || value > most)
      wrong(name, say('must be a whole number from 1 to {most}', { most: String(most) }));
    return value;
  };

  const chosen = [...new Set(read.choices('code').flatMap((code) => code.trim() || []))];
  const byCode = new Map(lots.map((lot) => [lot.code, lot]));
  const unknown = chosen.filter((code) => !byCode.has(code));
  if (unknown.length > 0)
    wrong(
      'code',
      say('there is no lot {codes} on the shelf; its code may have been changed', {
        codes: unknown.map((code) => `"${code}"`).join(', '),
      }),
    );

  const asked = read.text('paper');
  const found =
    asked === undefined
      ? usualPaper(unitSystem)
      : asked === OWN_SIZE
        ? readOwnPaper(read)
        : PAPERS.find(({ id }) => id === asked);
  if (!found && asked !== OWN_SIZE)
    wrong('paper', say('"{paper}" is none of the papers; choose one of the list', { paper: asked ?? '' }));
  const paper = found ?? usualPaper(unitSystem);

  const places = perSheet(paper);
  const from = wholeNumber('from', places);
  const forEachPouch = ['pouches', undefined].includes(read.text('copies'));
  const copies = forEachPouch ? 1 : wholeNumber('copies', MOST_LABELS);
  const address = readAddress(read.text('address') ?? origin);
  if (address === undefined)
    wrong(
      'address',
      say('must be an address such as {example}, with nothing behind it', {
        example: 'http://192.168.1.20:4810',
      }),
    );

  const wanted = chosen.flatMap((code) => {
    const lot = byCode.get(code);
    return lot ? [{ lot, copies: forEachPouch ? lot.pouches : copies }] : [];
  });
  const count = wanted.reduce((sum, entry) => sum + entry.copies, 0);
  if (count > MOST_LABELS)
    wrong(
      'copies',
      say('that would be {count} labels; the limit is {most} at once; choose fewer lots or copies', {
        count: String(count),
        most: String(MOST_LABELS),
      }),
    );
  if (chosen.length > 0 && unknown.length === 0 && count === 0)
    wrong(
      'copies',
      say(
        'none of the chosen lots has a pouch at home, so there is no label to print; enter a number of copies',
      ),
    );

  const request =
    read.problems.length === 0 && address !== undefined && wanted.length > 0
      ? { lots: wanted, paper, from, address }
      : undefined;
  return { ...read.refused(), request, paper, chosen };
}

/** Lengths that a label may have, mm: room for its type, and no more than a page. */
const [LEAST_MM, MOST_MM] = [20, 300];
const MOST_IN_A_ROW = 20;

/** @returns the paper of one's own size; `undefined` where `read.problems` says what is wrong with it */
function readOwnPaper(read: FormReader): Paper | undefined {
  const within = (name: string, least: number, most: number, usual?: number): number => {
    const value = read.number(name) ?? usual ?? NaN;
    if (!(value >= least && value <= most))
      read.add([{ field: name, message: say('must be from {least} to {most}', { least, most }) }]);
    return value;
  };
  const count = (name: string): number => {
    const value = within(name, 1, MOST_IN_A_ROW, 1);
    if (!Number.isInteger(value)) read.add([{ field: name, message: say('must be a whole number') }]);
    return value;
  };
  const size = {
    page: PAGES.find((page) => page === read.text('own.page')) ?? PAGES[0],
    widthMm: within('own.widthMm', LEAST_MM, MOST_MM),
    heightMm: within('own.heightMm', LEAST_MM, MOST_MM),
    columns: count('own.columns'),
    rows: count('own.rows'),
    gapXMm: within('own.gapXMm', 0, MOST_MM, 0),
    gapYMm: within('own.gapYMm', 0, MOST_MM, 0),
  };
  if (read.problems.length > 0) return undefined;
  const paper = ownPaper(size);
  if (!paper)
    read.add([
      {
        field: 'own.columns',
        message: say('so many labels do not fit on the page; check sizes, gaps and counts'),
      },
    ]);
  return paper;
}

/** @returns an origin, also of `192.168.1.20:4810` as one types it; `undefined` where it is no address or has more behind it. */
function readAddress(text: string): string | undefined {
  const url = URL.parse(/^[a-z]+:\/\//i.test(text) ? text : `http://${text}`);
  if (!url || !/^https?:$/.test(url.protocol) || url.pathname !== '/') return undefined;
  return url.search || url.hash || url.username || url.password ? undefined : url.origin;
}

/** @returns whether an address means the very device that opens it, so that a phone would look for the shelf on itself. */
export function isLoopback(address: string): boolean {
  const { hostname } = new URL(address);
  return /^(127\.\d+\.\d+\.\d+|\[::1\]|0\.0\.0\.0|(.+\.)?localhost)$/.test(hostname);
}
