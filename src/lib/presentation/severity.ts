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

/** The look of a notice; `note` alone is quiet. */
export const SEVERITY_LOOK: Readonly<Record<NoticeSeverity, 'wrong' | 'caution' | 'note'>> = {
  attention: 'wrong',
  warning: 'caution',
  caution: 'caution',
  check: 'caution',
  note: 'note',
};
