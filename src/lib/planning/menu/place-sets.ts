/** Sets of people at a table, as arrays of their places in order; up to 31 places the same set is the same array. */
export type Places = readonly number[];

/** Places up to this one are counted as bits. */
const MOST_BITS = 30;

const sets = new Map<number, Places>();
/** The places of a set of bits. */
export function setOf(bits: number): Places {
  const known = sets.get(bits);
  if (known) return known;
  const places: number[] = [];
  for (let place = 0; place <= MOST_BITS; place++) if ((bits >> place) & 1) places.push(place);
  sets.set(bits, places);
  return places;
}

export function bitsOf(places: Places): number {
  let bits = 0;
  for (const place of places) bits |= 1 << place;
  return bits;
}

const canBeBits = (places: Places): boolean => places.every((place) => place <= MOST_BITS);

/** A set as the array that stands for it. */
export const sameSet = (places: Places): Places => (canBeBits(places) ? setOf(bitsOf(places)) : places);

export const without = (all: Places, some: Places): Places =>
  canBeBits(all) ? setOf(bitsOf(all) & ~bitsOf(some)) : all.filter((place) => !some.includes(place));

export const sumOver = (places: Places, of: (place: number) => number): number => {
  let sum = 0;
  for (const place of places) sum += of(place);
  return sum;
};

/**
 * Of a large table, the sets of people worth looking at for a dish: those who may eat it, left out one at a time in the order of what leaving them out gains.
 *
 * @param least by place, what the dish comes to @param otherwise what they come to without it @param below sets that come to this or more are not looked at
 */
export function* chainOf(
  places: Places,
  least: ArrayLike<number>,
  otherwise: ArrayLike<number>,
  below: () => number,
): Generator<Places> {
  const gain = (place: number) => (least[place] ?? 0) - (otherwise[place] ?? 0);
  const byGain = places.filter((place) => Number.isFinite(least[place])).sort((a, b) => gain(a) - gain(b));
  let points = sumOver(places, (place) => otherwise[place] ?? 0) + sumOver(byGain, gain);
  for (let count = byGain.length; count > 0; count--) {
    if (points < below()) yield sameSet(byGain.slice(0, count).sort((a, b) => a - b));
    points -= gain(byGain[count - 1] ?? 0);
  }
}
