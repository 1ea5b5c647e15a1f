import type { NoticeSeverity } from '../planning/model/words.ts';
import { text, type Text } from '../texts/say.ts';

/** What stands before the text of a notice. */
export const SEVERITY_WORDS: Readonly<Record<NoticeSeverity, Text>> = {
  attention: text('Needs attention:'),
  warning: text('Warning:'),
  caution: text('Caution:'),
  check: text('Check:'),
  note: text('Note:'),
};

/** The classes of a notice: its colour, and its mark, which no two severities share. `note` alone is quiet. */
export const SEVERITY_LOOK: Readonly<Record<NoticeSeverity, string>> = {
  attention: 'wrong',
  warning: 'caution warning',
  caution: 'caution',
  check: 'caution check',
  note: 'note',
};
