/** Menus that put one wish before the others. */
export const WISHES = [
  'lightest',
  'most varied',
  'oldest first',
  'simplest at the stove',
  'one dish for all',
  'own pouches',
] as const;
export type Wish = (typeof WISHES)[number];
