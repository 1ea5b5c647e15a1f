import { text, type Text } from '../../texts/say.ts';

/** The usual cautions for whoever stands at the stove. Local rules and the makers' instructions come first. */
export const CARD_CAUTIONS: readonly Text[] = [
  text('Take the oxygen absorber out before any water goes in. It is not food.'),
  text('Use the stove in the open: in a tent or hut its carbon monoxide can kill. Obey local fire bans.'),
  text('Boiling water scalds. Set the pouch or pot down before pouring, and stir before the second wait.'),
  text(
    'Make water from the land safe first: a rolling boil of 1 minute, 3 minutes above 2000 m (6500 ft), or a filter or treatment as its maker says.',
  ),
  text(
    'Eat a rehydrated pouch at once and keep no rest of it. Throw away what smells, looks or feels wrong, or is soft where it should be crisp.',
  ),
  text(
    'Allergens are as the cook stated them; a shared pot or spoon carries them too. Ask before you share.',
  ),
  text('Local rules and professional advice go before this card.'),
];
