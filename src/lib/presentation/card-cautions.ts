import { say, text, type Text } from '../texts/say.ts';

const CARD_CAUTIONS: readonly Text[] = [
  text('Take the oxygen absorber out before any water goes in. It is not food.'),
  text('Use the stove outdoors: in a tent or hut, carbon monoxide can kill. Obey local fire bans.'),
  text('Boiling water scalds. Put the pouch or pot down before you pour, and stir before the second wait.'),
  text(
    'Treat all natural water first: 1 minute at a rolling boil (3 minutes above 2000 m / 6500 ft), or a filter or treatment used as its manufacturer says.',
  ),
  text(
    'Eat rehydrated food right away and do not save leftovers. Throw away anything that smells, looks or feels wrong, or is soft when it should be crisp.',
  ),
  text(
    'Allergens are as declared by the cook. A shared pot or spoon can carry them too: ask before you share.',
  ),
  text('Local rules and professional advice override this card.'),
];

/** @returns the usual cautions for whoever stands at the stove. Local rules and the makers' instructions come first. */
export const cardCautions = (): string[] => CARD_CAUTIONS.map((caution) => say(caution));
