import { ZxcvbnFactory } from '@zxcvbn-ts/core';
import { adjacencyGraphs, dictionary } from '@zxcvbn-ts/language-common';

export const SHORTEST = 12;
export const LONGEST = 500;
/** 10^8 guesses; the estimator calls what takes more "safely unguessable". */
const WEAKEST_SCORE = 3;

const estimator = new ZxcvbnFactory({ dictionary, graphs: adjacencyGraphs });

/** @returns what is wrong with a passphrase, for the user; `undefined` where it can be set */
export function problemWithPassphrase(text: string): string | undefined {
  const length = [...text].length;
  if (length < SHORTEST)
    return `It has ${length} characters, and needs at least ${SHORTEST}. Four or five words that do not belong together are easy to remember and hard to guess.`;
  if (length > LONGEST) return `It has ${length} characters; ${LONGEST} are the most.`;
  if (estimator.check(text).score < WEAKEST_SCORE)
    return 'It is among the first that anybody would try: a common one, a pattern or a repetition. Take words that do not belong together.';
  return undefined;
}
