const WATER =
  /\b(?:water(?:fall|hole)?|springs?|sources?|fountains?|streams?|creeks?|brooks?|becks?|rivers?|lakes?|tarns?|ponds?|wells?|taps?|faucets?|pumps?|cisterns?|troughs?)\b/;
const NO_WATER = /\b(?:(?:no|without) (?:\w+ )?water|waterless)\b/;
const UNRELIABLE =
  /\b(?:unreliable|uncertain|seasonal|intermittent|dry|dries|dried|bad|foul|undrinkable|not (?:potable|drinkable))\b/;

/**
 * Guesses from the words of a waypoint whether there is water, and whether it can be counted on; a person can change both (common practice).
 *
 * @param words name, symbol and type as the file has them
 */
export function guessWater(...words: string[]): { water: boolean; struck: boolean } {
  const text = words.join(' ; ').toLowerCase();
  const water = WATER.test(text) && !NO_WATER.test(text);
  return { water, struck: water && UNRELIABLE.test(text) };
}
