import fc from 'fast-check';
import { expect, it } from 'vitest';
import { gradePieces, MOST_PIECES } from './grade-pieces.ts';

const profileOf = (grades: readonly number[], stepM = 20) => {
  let altitudeM = 1000;
  return [0, ...grades].map((grade, index) => ({
    distanceM: index * stepM,
    altitudeM: (altitudeM += grade * stepM),
  }));
};
const sums = (pieces: readonly { lengthM: number; grade: number }[]) => ({
  lengthM: pieces.reduce((sum, piece) => sum + piece.lengthM, 0),
  climbM: pieces.reduce((sum, { lengthM, grade }) => sum + Math.max(0, lengthM * grade), 0),
  descentM: pieces.reduce((sum, { lengthM, grade }) => sum + Math.max(0, -lengthM * grade), 0),
});

it('joins what is equally steep, and gives each piece its mean altitude', () => {
  expect(gradePieces(profileOf([0.1, 0.1, 0.1, -0.2, -0.2, 0]))).toEqual([
    { lengthM: 60, grade: expect.closeTo(0.1, 9), altitudeM: expect.closeTo(1003, 9) },
    { lengthM: 40, grade: expect.closeTo(-0.2, 9), altitudeM: expect.closeTo(1002, 9) },
    { lengthM: 20, grade: 0, altitudeM: expect.closeTo(998, 9) },
  ]);
});

it('keeps length, climb and descent, whatever it merges', () => {
  const runs = fc.array(
    fc.record({
      sign: fc.constantFrom(-1, 1),
      grades: fc.array(fc.double({ min: 0, max: 0.6, noNaN: true }), { minLength: 20, maxLength: 60 }),
    }),
    { minLength: 1, maxLength: 20 },
  );
  fc.assert(
    fc.property(runs, (ways) => {
      const grades = ways.flatMap((way) => way.grades.map((grade) => way.sign * grade));
      const pieces = gradePieces(profileOf(grades));
      expect(pieces.length).toBeLessThanOrEqual(MOST_PIECES);
      const before = sums(grades.map((grade) => ({ lengthM: 20, grade })));
      const after = sums(pieces);
      expect(after.lengthM).toBeCloseTo(before.lengthM, 6);
      expect(after.climbM).toBeCloseTo(before.climbM, 6);
      expect(after.descentM).toBeCloseTo(before.descentM, 6);
    }),
    { seed: 1, numRuns: 50 },
  );
});

it('hardly changes the mean square of the grade of a long leg', () => {
  const grades = Array.from({ length: 2000 }, (_, i) => 0.15 * Math.sin(i / 40) + 0.03 * Math.sin(i / 3));
  const meanSquare = (pieces: readonly { lengthM: number; grade: number }[]) =>
    pieces.reduce((sum, { lengthM, grade }) => sum + lengthM * grade ** 2, 0) / 40_000;
  const exact = meanSquare(grades.map((grade) => ({ lengthM: 20, grade })));
  expect(meanSquare(gradePieces(profileOf(grades))) / exact).toBeGreaterThan(0.97);
});

it('does not join a way up with a way down, even if there are more than 200', () => {
  const zigzag = Array.from({ length: 500 }, (_, i) => (i % 2 === 0 ? 0.6 : -0.6));
  expect(gradePieces(profileOf(zigzag)).length).toBe(500);
});

it('of one point are none', () => {
  expect(gradePieces(profileOf([]))).toEqual([]);
});
