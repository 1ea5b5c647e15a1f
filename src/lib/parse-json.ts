import { parse as findFault } from '@humanwhocodes/momoa';
import { beyondBounds } from './json-bounds.ts';
import { say } from './texts/say.ts';

/**
 * Reads JSON text that a person may have typed.
 *
 * @returns the value, or what is wrong and where: "Unexpected token '}' … (line 3, column 12)"
 */
export function parseJson(text: string): { readonly value: unknown } | { readonly fault: string } {
  const beyond = beyondBounds(text);
  if (beyond !== undefined) return { fault: beyond };
  try {
    return { value: JSON.parse(text) };
  } catch (error) {
    const fault = error instanceof Error ? error.message : String(error);
    // The engine names line and column for some faults only.
    return { fault: oneLine(/line \d+/.test(fault) ? fault : `${fault} (${placeOfFault(text)})`) };
  }
}

/** To find the place, a text is taken apart once more, into objects of some hundred times its size. */
const LONGEST_TO_SEARCH = 1_000_000;

function placeOfFault(text: string): string {
  if (text.length > LONGEST_TO_SEARCH) return say('place unknown');
  try {
    findFault(text);
    return say('place unknown');
  } catch (error) {
    const { line, column } = error as { line?: number; column?: number };
    // What is nested out of reason gets no further than the stack.
    if (line === undefined || column === undefined) return say('place unknown');
    return say('line {line} column {column}', { line: String(line), column: String(column) });
  }
}

/** The engine quotes what it found, line breaks and all. */
const oneLine = (message: string): string => message.replace(/[\p{Cc}\s]+/gu, ' ');
