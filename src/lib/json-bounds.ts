import { say } from './texts/say.ts';

/** No input of the program nests deeper: a trip has some ten levels. */
const MOST_LEVELS = 100;
/** A shelf of 20,000 lots with every field has some 600,000. */
const MOST_VALUES = 1_000_000;
/** Of one object: those of the program have some dozens, and some tables of a trip a field for each lot. */
const MOST_FIELDS = 20_000;

const QUOTE = 0x22;
const BACKSLASH = 0x5c;
const COMMA = 0x2c;
const COLON = 0x3a;
const OPENING = [0x5b, 0x7b];
const CLOSING = [0x5d, 0x7d];

/**
 * Looks over JSON text before it is parsed, since what is parsed takes up to thirty times the memory of its text, and what nests without end
 * the stack as well. Whether it is JSON at all, the parser says.
 *
 * @returns what there is too much of, for the user; `undefined` where it may be parsed
 */
export function beyondBounds(text: string): string | undefined {
  let levels = 0;
  let values = 0;
  let inText = false;
  /** Fields of the objects that are open, by their level. */
  const fields: number[] = [];
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (inText) {
      if (code === BACKSLASH) at++;
      else if (code === QUOTE) inText = false;
    } else if (code === QUOTE) inText = true;
    else if (code === COMMA) values++;
    else if (code === COLON) {
      const count = (fields[levels] ?? 0) + 1;
      fields[levels] = count;
      if (count > MOST_FIELDS)
        return say('one object in it has more than {most, number} fields', { most: MOST_FIELDS });
    } else if (code === OPENING[0] || code === OPENING[1]) {
      levels++;
      values++;
      fields[levels] = 0;
      if (levels > MOST_LEVELS)
        return say('it is nested more than {most} levels deep', { most: MOST_LEVELS });
    } else if (code === CLOSING[0] || code === CLOSING[1]) levels--;
    if (values > MOST_VALUES) return say('it has more than {most, number} values', { most: MOST_VALUES });
  }
  return undefined;
}
