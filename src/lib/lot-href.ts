/** Words that have a page of their own beside the lots, and dots, which a browser takes for a folder. */
const TAKEN = ['new', 'import', 'labels', 'pictures', 'export.csv', 'lots.json', '.', '..'];

/** @returns the address of the page of a lot. A code that would lead elsewhere gets a tilde before it. */
export function lotHref(code: string): string {
  return `/shelf/${TAKEN.includes(code) || code.startsWith('~') ? '~' : ''}${encodeURIComponent(code)}`;
}

/** @returns the code that `lotHref` put into the address. */
export function codeInAddress(param: string): string {
  return param.replace(/^~/, '');
}

/** @returns the address of the page that prints the labels of lots. */
export const labelsHref = (codes: readonly string[]): string =>
  `/shelf/labels?${new URLSearchParams(codes.map((code) => ['code', code]))}`;
