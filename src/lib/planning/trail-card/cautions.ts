/** The usual cautions for whoever stands at the stove. Local rules and the makers' instructions come first. */
export const CARD_CAUTIONS: readonly string[] = [
  'Take the oxygen absorber out before any water goes in. It is not food.',
  'Use the stove in the open: in a tent or hut its carbon monoxide can kill. Obey local fire bans.',
  'Boiling water scalds. Set the pouch or pot down before pouring, and stir before the second wait.',
  'Make water from the land safe first: a rolling boil of 1 minute, 3 minutes above 2000 m (6500 ft), or a filter or treatment as its maker says.',
  'Eat a rehydrated pouch at once and keep no rest of it. Throw away what smells, looks or feels wrong, or is soft where it should be crisp.',
  'Allergens are as the cook stated them; a shared pot or spoon carries them too. Ask before you share.',
  'Local rules and professional advice go before this card.',
];
