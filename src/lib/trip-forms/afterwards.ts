import { withoutUndefined, type Entered, type FormReader } from '$lib/forms/read-form.ts';
import { Afterwards } from '$lib/planning/model/afterwards.ts';
import { problemsOf } from '$lib/presentation/problems.ts';
import { fieldValue, type UnitSystem } from '$lib/presentation/show.ts';
import { say } from '$lib/texts/say.ts';
import type { AfterwardsSubjects } from '$lib/trip-views/afterwards.ts';

/*
 * The form of a trip that came home. Its fields are numbered like the lists of `AfterwardsSubjects`: `back[0]` of the first lot,
 * `appetite[1]` of the second eater. A list that has changed since the form was opened has another version of the trip.
 */

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
  subjects.recipes.forEach(({ name }, index) => {
    fields[`water[${index}]`] = [said?.water.find(({ recipe }) => recipe === name)?.finding ?? ''];
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
        return subjects.recipes[index]?.name;
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
      water: each('water', subjects.recipes, ({ name }, index) => {
        const finding = read.text(`water[${index}]`);
        return finding === undefined ? undefined : { recipe: name, finding };
      }),
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
            `${list === 'appetites' ? 'appetite' : list}[${placed[list]?.[Number(place)] ?? place}]`,
        ),
      })),
    );
  return result.success && read.problems.length === 0 ? { back, said: result.data } : undefined;
}
