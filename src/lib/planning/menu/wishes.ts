import { text, type Text } from '../../texts/say.ts';

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

/** How each menu that can be chosen is called. */
export const CHOICE_WORDS: Readonly<Record<Wish | 'best found', Text>> = {
  'best found': text('best found'),
  lightest: text('lightest'),
  'most varied': text('most varied'),
  'oldest first': text('oldest first'),
  'simplest at the stove': text('simplest at the stove'),
  'one dish for all': text('one dish for all'),
  'own pouches': text('own pouches'),
};
