import { say, type Text, type Values } from './say.ts';

/*
 * A sentence that is stored is read by people of other languages than those of whoever caused it: its text and its values are kept, and it is said when it is read.
 */

/** @returns a text with its values, to be stored */
export const keep = (source: Text, values: Values): string => JSON.stringify({ text: source, values });

/** @returns what was kept, in the language around; what is no kept text as it is, such as sentences that were stored before */
export function sayKept(stored: string): string {
  if (!stored.startsWith('{"text":')) return stored;
  const { text, values } = JSON.parse(stored) as { readonly text: Text; readonly values: Values };
  return say(text, values);
}
