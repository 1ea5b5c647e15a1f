import { say, type Text } from '$lib/texts/say.ts';
import type { Difference } from './fields.ts';
import type { Entered } from './read-form.ts';

/** How the fields of a form are said. */
export type FieldWords = {
  /** @returns the label of a field; `undefined` where it is none that people fill in */
  label(field: string): string | undefined;
  /** @returns what the choices of a field are called; `undefined` where it takes what is typed */
  choices(field: string): Readonly<Record<string, Text>> | undefined;
};

/**
 * @param mine what one person entered
 * @param theirs what the form would be filled with from what is stored
 * @returns the fields in which two fillings of a form differ, as people read them
 */
export function differences(mine: Entered, theirs: Entered, { label, choices }: FieldWords): Difference[] {
  const words = (field: string, values: readonly string[] = []) =>
    values
      .map((value) => {
        const word = choices(field)?.[value];
        return word ? say(word) : value.replace(/\r\n?/g, '\n').trim();
      })
      .filter(Boolean)
      .sort()
      .join(', ') || '–';
  return [...new Set([...Object.keys(mine), ...Object.keys(theirs)])].flatMap((field) => {
    const said = label(field);
    const [ours, others] = [words(field, mine[field]), words(field, theirs[field])];
    return said !== undefined && ours !== others ? [{ label: said, mine: ours, theirs: others }] : [];
  });
}
