import type { ProfilePoint } from '../model/route.ts';

/** A piece of a leg that is walked at one grade. */
export type GradePiece = {
  readonly lengthM: number;
  /** Rise over way, as a share: 0.1 for 10 % up, -0.05 for 5 % down. */
  readonly grade: number;
  /** Mean altitude. */
  readonly altitudeM: number;
};

/** Most pieces of a leg, unless it has more ways up and down than that. */
export const MOST_PIECES = 200;
/** Neighbours whose grades differ by no more than this are one piece anyway: m times grade², 10 m and 10 m at 0.04 % apart. */
const SAME_GRADE = 1e-6;

/**
 * The grades of a profile in the order of the way. Neighbours that differ least are merged until at most MOST_PIECES are left: each merge is the one that
 * least changes the mean square of the grade, and none joins a way up with a way down. Length, climb and descent stay what they are.
 */
export function gradePieces(profile: readonly ProfilePoint[]): GradePiece[] {
  const pieces = profile.slice(1).flatMap((point, index): GradePiece[] => {
    const before = profile[index];
    if (!before) return [];
    const lengthM = point.distanceM - before.distanceM;
    return [
      {
        lengthM,
        grade: (point.altitudeM - before.altitudeM) / lengthM,
        altitudeM: (point.altitudeM + before.altitudeM) / 2,
      },
    ];
  });
  const costs = pieces.map((piece, index) => mergeCost(piece, pieces[index + 1]));
  while (pieces.length > 1) {
    let cheapest = 0;
    for (let i = 1; i < costs.length; i++)
      if ((costs[i] ?? Infinity) < (costs[cheapest] ?? Infinity)) cheapest = i;
    const [a, b] = [pieces[cheapest], pieces[cheapest + 1]];
    const cost = costs[cheapest] ?? Infinity;
    if (!a || !b || cost === Infinity || (pieces.length <= MOST_PIECES && cost > SAME_GRADE)) break;
    pieces.splice(cheapest, 2, merge(a, b));
    costs.splice(cheapest, 1);
    for (const i of [cheapest - 1, cheapest]) if (i >= 0) costs[i] = mergeCost(pieces[i], pieces[i + 1]);
  }
  return pieces;
}

function mergeCost(a: GradePiece | undefined, b: GradePiece | undefined): number {
  if (!a || !b || a.grade * b.grade < 0) return Infinity;
  return ((a.lengthM * b.lengthM) / (a.lengthM + b.lengthM)) * (a.grade - b.grade) ** 2;
}

function merge(a: GradePiece, b: GradePiece): GradePiece {
  const lengthM = a.lengthM + b.lengthM;
  return {
    lengthM,
    grade: (a.grade * a.lengthM + b.grade * b.lengthM) / lengthM,
    altitudeM: (a.altitudeM * a.lengthM + b.altitudeM * b.lengthM) / lengthM,
  };
}
