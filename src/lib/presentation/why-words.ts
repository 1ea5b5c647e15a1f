import { say, text, type Text } from '../texts/say.ts';
import { DAY_KIND_WORDS } from './code-words.ts';
import type { UsualValue, Why } from '../planning/model/why.ts';

/** Rules of thumb, in the order of the codes. */
const USUAL: Readonly<Record<UsualValue, Text>> = {
  'first meal': text('most groups have breakfast at home on the first day'),
  'last meal': text('most parties are home for dinner on the last day'),
  energy: text('an adult who walks all day with a pack needs some 2500 to 4000 kcal'),
  'carry limit': text('about a quarter of the body mass of an adult of 72 kg'),
  'carry limit of an adult': text('a quarter of the body mass of an adult'),
  'base weight': text('pack, shelter, sleeping bag, clothes and a share of the kitchen'),
  'base weight of an adult': text(
    'a ninth of the body mass: pack, shelter, sleeping bag, clothes and a share of the kitchen',
  ),
  'base weight of a minor': text('5% of the body mass: clothes and a small bag, adults carry the rest'),
  'bag of a child': text(
    'a child whose body mass is not entered carries a small bag of their own and nothing else',
  ),
  bottles: text('two bottles and a bag'),
  'bottle of a minor': text('a bottle of their own'),
  range: text('the central estimate'),
  deficit: text('no one goes hungry unless you choose it'),
  acclimatised: text('the body takes 10 to 14 days to get used to heat'),
  treatment: text('the most common method on the trail'),
  'serving style': text('a pot or pouches of their own, whichever costs less food, fuel and weight'),
  'reserve meals': text('take a meal or two more where weather or a late bus can delay you'),
  'party factor': text("the group walks at the method's pace"),
  rests: text("about ten minutes' break per hour"),
  'walking hours': text('a usual day on the trail'),
  'camp altitude': text('low hills'),
  'air temperature': text('a mild day'),
  'water temperature': text('a stream in the hills in summer'),
  humidity: text('a fair day'),
  sun: text('some sun and some shade'),
  wind: text('the stove is behind its windscreen'),
  terrain: text('a trodden path'),
  'camp water': text('camps are mostly chosen near water'),
  'water on the way': text('streams or huts twice a day'),
  fuel: text('the most widespread stove'),
  gas: text('the size of most canisters for hiking'),
  pot: text('a light pot of 1.5 l with its lid'),
  'water in a pot': text('a pot for two to four'),
  'fuel reserve': text('wind, spills and an extra hot drink'),
  'efficiency of canister-gas': text(
    'canister stoves put 40 to 60% of the heat into water and pot, more with a heat exchanger',
  ),
  'efficiency of naphtha': text(
    'pressure stoves bring 35 to 55% of the heat into water and pot, less what priming burns',
  ),
  'efficiency of kerosene': text(
    'pressure stoves bring 35 to 55% of the heat into water and pot, less what priming burns',
  ),
  'efficiency of ethanol': text('open alcohol burners put 30 to 50% of the heat into water and pot'),
};

/** @returns why a value holds that nobody entered, without a full stop. */
export function whyText(why: Why): string {
  switch (why.code) {
    case 'usual':
      return say('{why} (rule of thumb)', { why: say(USUAL[why.of]) });
    case 'signposts':
      return say('the figures of DIN 33466, as signposts in the Alps use');
    case 'carry limit of a minor':
      return say('15% of the body mass of a child or youth (Brackley & Stevenson 2004)');
    case 'only dinner':
      return say('the only day begins with dinner');
    case 'entered':
      return say('as entered for this trip');
    case 'kind of day':
      return say(DAY_KIND_WORDS[why.kind]);
    case 'appetite learned':
      return say("learned from {eater}'s answers after {count, plural, =1 {one trip} other {# trips}}", {
        eater: why.eater,
        count: why.trips,
      });
    case 'pace learned':
      return say('learned from the hours walked on {count, plural, =1 {one trip} other {# trips}}', {
        count: why.trips,
      });
    case 'efficiency learned':
      return say('learned from the fuel weighed on {count, plural, =1 {one trip} other {# trips}}', {
        count: why.trips,
      });
    case 'measured':
      return say('measured in {runs, plural, one {# boil} other {# boils}} of your own', { runs: why.runs });
  }
}
