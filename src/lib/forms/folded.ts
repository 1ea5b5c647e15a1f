import { say, type Text } from '$lib/texts/say.ts';

/** A field of a closed fold. */
export type Folded = {
  /** Before its value; left out where the value says it all. */
  readonly label?: string;
  /** What is entered, with its unit; empty where nothing is. */
  readonly entered: string;
  /** What holds where nothing is entered; left out where that needs no word. */
  readonly usual?: string | undefined;
};

/** @returns a value of a field as it is read: the words of a choice, or the figure with its unit. */
export const enteredInWords = (
  value: string,
  { words, unit }: { readonly words?: Readonly<Record<string, Text>>; readonly unit?: string } = {},
): string => {
  const word = words?.[value];
  if (word) return say(word);
  return value && unit ? `${value} ${unit}` : value;
};

/**
 * @returns what a closed fold says of its fields: what is entered first, then what holds otherwise.
 * @example
 * foldedInWords([
 *   { label: 'Carry limit', entered: '14 kg', usual: '18 kg' },
 *   { label: 'Base weight', entered: '', usual: '9 kg' },
 * ]); // "Carry limit 14 kg · default: Base weight 9 kg"
 */
export function foldedInWords(fields: readonly Folded[]): string {
  const inWords = (label: string | undefined, value: string) => [label, value].filter(Boolean).join(' ');
  const entered = fields.flatMap(({ label, entered: value }) => (value ? [inWords(label, value)] : []));
  const usual = fields.flatMap(({ label, entered: value, usual: holds }) =>
    value || holds === undefined ? [] : [inWords(label, holds)],
  );
  const otherwise = usual.length > 0 ? [say('default: {value}', { value: usual.join(', ') })] : [];
  return [entered.join(', '), ...otherwise].filter(Boolean).join(' · ');
}
