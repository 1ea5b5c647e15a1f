import type { UnitSystem } from '../presentation/show.ts';
import { text } from '../texts/say.ts';

/** Papers that the card and the lists of a trip are printed on; each has a css of its name in components/trip/paper. */
export const SHEET_PAPERS = [
  { id: 'a5', name: text('A5') },
  { id: 'a4', name: text('A4') },
  { id: 'half-letter', name: text('US half letter') },
  { id: 'letter', name: text('US letter') },
] as const;
export type SheetPaper = (typeof SHEET_PAPERS)[number]['id'];

/** @returns the paper that an address asks for; where it asks for none that there is, the one that fits a pocket. */
export function sheetPaper({ searchParams }: URL, system: UnitSystem): SheetPaper {
  const asked = searchParams.get('paper');
  return SHEET_PAPERS.find(({ id }) => id === asked)?.id ?? (system === 'us' ? 'half-letter' : 'a5');
}
