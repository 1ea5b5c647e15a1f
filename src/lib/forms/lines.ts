import type { Problem } from '$lib/presentation/problems.ts';
import type { Entered, FormReader } from './read-form.ts';

/*
 * Lists in a form: line 2 of `staples` has the fields `staples[2].name`, `staples[2].kcalPer100G` and so on. One more line than is
 * stored stands empty for what is added; a ticked `staples[2].remove` takes a line out.
 */

/** @returns the numbers of the lines of a list that were sent or filled in, in order: 0, 1, 2 … */
export function linesOf(entered: Entered, list: string): number[] {
  const lines = new Set<number>();
  for (const name of Object.keys(entered)) {
    const [, found, index] = /^(\w+)\[(\d{1,4})\]\./.exec(name) ?? [];
    if (found === list) lines.add(Number(index));
  }
  return [...lines].sort((a, b) => a - b);
}

/** @returns the lines to show: those that are stored, an empty one to add to them, and those that were typed before a refusal. */
export function linesWithNew(stored: Entered, typed: Entered | undefined, list: string): number[] {
  const lines = linesOf(stored, list);
  const all = new Set([...lines, lines.length, ...linesOf(typed ?? {}, list)]);
  return [...all].sort((a, b) => a - b);
}

/**
 * @param alwaysChosen fields that say something in every line, so that they do not tell one that is meant from the empty one
 * @returns the lines to keep: neither to be removed nor left empty
 */
export function keptLines(read: FormReader, list: string, alwaysChosen: readonly string[]): number[] {
  const filled = Object.entries(read.entered).filter(([name, values]) => {
    const field = name.slice(name.indexOf('.') + 1);
    return !alwaysChosen.includes(field) && values.some((value) => value.trim() !== '');
  });
  return linesOf(Object.fromEntries(filled), list).filter(
    (line) => read.text(`${list}[${line}].remove`) === undefined,
  );
}

/**
 * @param kept the lines of each list that were kept, in the order in which they were checked
 * @returns the problems at the lines of the form
 */
export function atLines(
  problems: readonly Problem[],
  kept: Readonly<Record<string, readonly number[]>>,
): Problem[] {
  return problems.map((problem) => ({
    ...problem,
    field: problem.field.replace(
      /^(\w+)\[(\d+)\]/,
      (_, list: string, place: string) => `${list}[${kept[list]?.[Number(place)] ?? place}]`,
    ),
  }));
}
