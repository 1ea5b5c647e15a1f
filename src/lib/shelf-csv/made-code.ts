import type { StatedLot } from '../planning/model/stated-lot.ts';
import { plainWords } from './fields.ts';

/** Letters and digits that are not taken for one another when read from a pouch. */
const SIGNS = '23456789ABCDEFGHJKMNPQRSTVWXYZ';
const HASHED = 4;

/**
 * A short code for a lot that has none: letters of the recipe, and signs of a hash of what stays the same when the table is imported again: recipe, date and
 * servings in a pouch, not its count or what was weighed.
 *
 * @param longer how many signs more, where another lot has that code
 * @returns such as `CCC-7K2Q`; `undefined` where the recipe has no letter
 */
export function madeCode(
  { recipe, sealedOn, bestBefore, servingsPerPouch }: Partial<StatedLot>,
  longer = 0,
): string | undefined {
  const words = plainWords(recipe ?? '')
    .split(' ')
    .filter(Boolean);
  const [first] = words;
  if (first === undefined) return undefined;
  const own = words.filter((word) => word.length > 2);
  const letters = own.length > 1 ? own.map((word) => word[0]).join('') : (own[0] ?? first);
  const identity = [words.join(' '), sealedOn ?? bestBefore ?? '', servingsPerPouch ?? ''].join('|');
  return `${letters.slice(0, 4).toUpperCase()}-${hashSigns(identity, HASHED + longer)}`;
}

/** The code that earlier versions made, of recipe and sealing date: lots on the shelf may have it still. */
export function earlierCode({ recipe, sealedOn }: Partial<StatedLot>): string | undefined {
  if (recipe === undefined || sealedOn === undefined) return undefined;
  const name = recipe
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, '-')
    .slice(0, 29)
    .replace(/^-|-$/g, '');
  return name === '' ? undefined : `${name}-${sealedOn}`;
}

/** FNV-1a (Fowler, Noll, Vo; RFC 9923), 64 bits. */
function hashSigns(text: string, count: number): string {
  let hash = 0xcbf29ce484222325n;
  for (const byte of new TextEncoder().encode(text))
    hash = BigInt.asUintN(64, (hash ^ BigInt(byte)) * 0x100000001b3n);
  let signs = '';
  for (let sign = 0; sign < count; sign++) {
    signs += SIGNS[Number(hash % BigInt(SIGNS.length))];
    hash /= BigInt(SIGNS.length);
  }
  return signs;
}
