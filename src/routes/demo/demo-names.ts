import { say, text, type Text } from '$lib/texts/say.ts';

/** What the demo calls its dishes, and what it notes of them. */
const NAMES: ReadonlySet<string> = new Set<Text>([
  text('Five days over the ridge'),
  text('Apple cinnamon oats'),
  text('Buckwheat porridge with plums'),
  text('Berry muesli with hazelnuts'),
  text('Scrambled egg with peppers and potato'),
  text('Rice pudding with sour cherries'),
  text('Hummus with lemon'),
  text('Couscous with tomatoes and salted cheese'),
  text('Bean and vegetable soup with noodles'),
  text('Pasta salad with tuna'),
  text('Rice noodles with peanut dressing'),
  text('Beetroot and white bean spread'),
  text('Red lentil dal with rice'),
  text('Bean chilli with beef'),
  text('Mushroom risotto with hard cheese'),
  text('Chicken curry with coconut and rice'),
  text('Noodles with tomato and soy mince'),
  text('Potato stew with smoked pork'),
  text('Mango and apple leather'),
  text('Beef strips with pepper'),
  text('Oat and walnut crunch'),
  text('Roasted chickpeas with paprika'),
  text('Date and sesame rounds'),
  text('Cocoa with milk'),
  text('Ginger and lemon drink with honey'),
  text('Vegetable broth with barley flakes'),
  text('Certified gluten-free buckwheat'),
  text('Stir well, then wait'),
  text('Use up this summer'),
  text('Best-before falls within the summer trip'),
  text('Keep dry; eat soon after opening'),
  text('Salty: welcome after a hot day'),
  text(
    'Brown the mince, pour off the fat and blot it. Add everything else and simmer until the spoon leaves a track; cut small what is thicker than a finger.',
  ),
  text('Cook the rice apart and stir it in at the end, so that it dries as single grains.'),
  text('Soak overnight in the fridge, cook to a porridge, spread thin.'),
]);

/**
 * @param words a name or a note of the demo's files, in English
 * @returns it in the language around
 * @throws RangeError where it is not among them
 */
export function demoName(words: string): string {
  if (!NAMES.has(words)) throw new RangeError(`"${words}" is no name of the demo`);
  return say(words as Text);
}
