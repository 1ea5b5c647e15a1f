import { withoutUndefined, type Entered, type FormReader } from '$lib/forms/read-form.ts';
import { Afterwards } from '$lib/planning/model/afterwards.ts';
import type { WaterFinding } from '$lib/planning/model/recipe.ts';
import { LIKINGS, type Liking, type Verdict } from '$lib/planning/model/words.ts';
import { problemsOf } from '$lib/presentation/problems.ts';
import { fieldValue, type UnitSystem } from '$lib/presentation/show.ts';
import { say, sayList } from '$lib/texts/say.ts';
import type { AfterwardsSubjects, DishAfterwards } from '$lib/trip-views/afterwards.ts';

/*
 * The form of a trip that came home. Its fields are numbered like the lists of `AfterwardsSubjects`: `back[0]` of the first lot,
 * `appetite[1]` of the second eater. A list that has changed since the form was opened has another version of the trip.
 */

/** What a note on the trail says of the water, in the words of a finding at home. */
const WATER_AS_NOTED: Partial<Record<Verdict, WaterFinding>> = {
  'too wet': 'some liquid left',
  'too dry': 'a little dry',
};
/** The lists of names of a dish. */
const LISTS: Readonly<Record<'liked' | 'disliked', Liking>> = { liked: 'liked', disliked: 'not liked' };

/** @returns what the form is filled with: what was noted on the trail, and what was said when the trip was last finished. */
export function afterwardsFields(
  subjects: AfterwardsSubjects,
  said: Afterwards | undefined,
  system: UnitSystem,
): Entered {
  const fields: Record<string, string[]> = {};
  subjects.lots.forEach(({ code, left, leftOverNoted }, index) => {
    const servings = said?.leftOver.find((other) => other.code === code)?.servings ?? leftOverNoted;
    fields[`back[${index}]`] = [left > 0 ? '0' : ''];
    fields[`leftOver[${index}]`] = [servings > 0 ? String(servings) : ''];
  });
  subjects.eaters.forEach(({ name }, index) => {
    fields[`appetite[${index}]`] = [said?.appetites.find(({ eater }) => eater === name)?.answer ?? ''];
  });
  subjects.dishes.forEach((dish, index) => {
    const isOfDish = ({ recipe }: { readonly recipe: string }) => recipe === dish.name;
    const noted = (verdicts: readonly Verdict[]) => dish.noted.findLast((kind) => verdicts.includes(kind));
    const water = noted(['too wet', 'too dry']);
    const liking = noted(LIKINGS);
    fields[`water[${index}]`] = [
      said?.water.find(isOfDish)?.finding ?? (water ? WATER_AS_NOTED[water] : undefined) ?? '',
    ];
    fields[`portion[${index}]`] = [
      said?.portions.find(isOfDish)?.answer ?? noted(['too little', 'too much']) ?? '',
    ];
    const tastes = said?.tastes.filter(isOfDish) ?? dish.eaters.map((eater) => ({ eater, answer: liking }));
    for (const [list, liked] of Object.entries(LISTS))
      fields[`${list}[${index}]`] = tastes.filter(({ answer }) => answer === liked).map(({ eater }) => eater);
  });
  subjects.containers.forEach(({ beforeG }, index) => {
    const weighed = said?.fuel.length === subjects.containers.length ? said.fuel[index] : undefined;
    fields[`fuel[${index}].beforeG`] = [fieldValue(weighed?.beforeG ?? beforeG, 'food', system)];
    fields[`fuel[${index}].afterG`] = [weighed ? fieldValue(weighed.afterG, 'food', system) : ''];
  });
  subjects.days.forEach((_, index) => {
    const hours = said?.walkedH[index] ?? null;
    fields[`walkedH[${index}]`] = [hours === null ? '' : String(hours)];
  });
  return fields;
}

/** @returns the label of a field of the form. */
export function afterwardsLabel(subjects: AfterwardsSubjects): (field: string) => string | undefined {
  return (field) => {
    const [, list, place, part] = /^(\w+)\[(\d+)\](?:\.(\w+))?/.exec(field) ?? [];
    const index = Number(place);
    switch (list) {
      case 'back':
        return say('Brought home of {code}', { code: subjects.lots[index]?.code ?? '' });
      case 'leftOver':
        return say('Left over of {code}', { code: subjects.lots[index]?.code ?? '' });
      case 'appetite':
        return subjects.eaters[index]?.name;
      case 'water':
      case 'portion':
      case 'liked':
      case 'disliked':
        return subjects.dishes[index]?.name;
      case 'fuel':
        return say('{container}, weight {when, select, afterG {after} other {before}}', {
          container: subjects.containers[index]?.label ?? '',
          when: part ?? '',
        });
      case 'walkedH':
        return say('Hours of day {day}', { day: index + 1 });
      default:
        return undefined;
    }
  };
}

/** Fields that are called otherwise than their list. */
const FIELD_OF: Readonly<Record<string, string>> = { appetites: 'appetite', portions: 'portion' };

/** Who liked a dish and who did not; nobody can be ticked for both. */
function readTastes(read: FormReader, { name, eaters }: DishAfterwards, index: number): Afterwards['tastes'] {
  const [liked, disliked] = Object.keys(LISTS).map((list) => read.choices(`${list}[${index}]`));
  const both = eaters.filter((eater) => liked?.includes(eater) && disliked?.includes(eater));
  if (both.length > 0)
    read.add([
      {
        field: `disliked[${index}]`,
        message: say('{names}: tick one of the two only', { names: sayList(both) }),
      },
    ]);
  return eaters.flatMap((eater) => [
    ...(liked?.includes(eater) ? [{ recipe: name, eater, answer: LISTS.liked }] : []),
    ...(disliked?.includes(eater) ? [{ recipe: name, eater, answer: LISTS.disliked }] : []),
  ]);
}

/** Pouches that came home, and what was said. */
export type ReadAfterwards = {
  readonly back: { readonly code: string; readonly pouches: number }[];
  readonly said: Afterwards;
};

/** @returns what was entered, or `undefined` where `read.problems` says what has to be mended. */
export function readAfterwards(read: FormReader, subjects: AfterwardsSubjects): ReadAfterwards | undefined {
  const back = subjects.lots.map(({ code, left }, index) => {
    const field = `back[${index}]`;
    const pouches = read.number(field) ?? 0;
    if (!Number.isInteger(pouches) || pouches < 0 || pouches > left)
      read.add([
        {
          field,
          message: say('must be a whole number from 0 to {left}, as {left} are in the packs', {
            left: String(left),
          }),
        },
      ]);
    return { code, pouches };
  });

  /** Where each entry of a list stands in the form. */
  const placed: Record<string, number[]> = {};
  const each = <Subject, Entry>(
    name: string,
    subjects: readonly Subject[],
    entryOf: (subject: Subject, index: number) => Entry | undefined,
  ): Entry[] => {
    const places: number[] = (placed[name] = []);
    return subjects.flatMap((subject, index) => {
      const entry = entryOf(subject, index);
      if (entry === undefined) return [];
      places.push(index);
      return [entry];
    });
  };
  const weight = (name: string) => read.number(name, { quantity: 'food' });
  const fuel = each('fuel', subjects.containers, ({ label, tareG, beforeG }, index) => {
    const afterG = weight(`fuel[${index}].afterG`);
    return afterG === undefined
      ? undefined
      : { label, tareG, beforeG: weight(`fuel[${index}].beforeG`) ?? beforeG, afterG };
  });
  const result = Afterwards.safeParse(
    withoutUndefined({
      leftOver: each('leftOver', subjects.lots, ({ code }, index) => {
        const servings = read.number(`leftOver[${index}]`);
        return servings === undefined || servings === 0 ? undefined : { code, servings };
      }),
      appetites: each('appetites', subjects.eaters, ({ name }, index) => {
        const answer = read.text(`appetite[${index}]`);
        return answer === undefined ? undefined : { eater: name, answer };
      }),
      water: each('water', subjects.dishes, ({ name }, index) => {
        const finding = read.text(`water[${index}]`);
        return finding === undefined ? undefined : { recipe: name, finding };
      }),
      portions: each('portions', subjects.dishes, ({ name }, index) => {
        const answer = read.text(`portion[${index}]`);
        return answer === undefined ? undefined : { recipe: name, answer };
      }),
      tastes: subjects.dishes.flatMap((dish, index) => readTastes(read, dish, index)),
      fuel,
      walkedH: subjects.days.map((_, index) => read.number(`walkedH[${index}]`) ?? null),
    }),
    { reportInput: true },
  );
  // One container that was not weighed leaves the fuel burnt unknown.
  if (fuel.length > 0 && fuel.length < subjects.containers.length)
    subjects.containers.forEach((_, index) => {
      const field = `fuel[${index}].afterG`;
      if (!placed['fuel']?.includes(index) && read.text(field) === undefined)
        read.add([
          {
            field,
            message: say(
              'is missing; weigh this container too, or clear the others: fuel burnt is known only from all of them',
            ),
          },
        ]);
    });
  if (!result.success)
    read.add(
      problemsOf(result.error).map((problem) => ({
        ...problem,
        field: problem.field.replace(
          /^(\w+)\[(\d+)\](?:\.(servings|answer|finding))?/,
          (_, list: string, place: string) =>
            `${FIELD_OF[list] ?? list}[${placed[list]?.[Number(place)] ?? place}]`,
        ),
      })),
    );
  return result.success && read.problems.length === 0 ? { back, said: result.data } : undefined;
}
