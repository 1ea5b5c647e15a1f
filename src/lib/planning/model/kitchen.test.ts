import { expect, it } from 'vitest';
import { defaultKitchen, Kitchen } from './kitchen.ts';
import { problemsOf } from './problems.ts';

const KITCHEN = defaultKitchen();
const problemsWith = (change: Partial<Kitchen>) => {
  const result = Kitchen.safeParse({ ...KITCHEN, ...change });
  return result.success ? [] : problemsOf(result.error);
};

it('takes its own usual values', () => {
  expect(problemsWith({})).toEqual([]);
});

it('tells apart what is called by its name, and names the later one', () => {
  const twice = <Line>([first, second]: readonly Line[]): Line[] => [first!, second!, first!];
  expect(problemsWith({ dryers: twice(KITCHEN.dryers) })).toEqual([
    { field: 'dryers[2].name', message: '"freeze dryer" is listed twice; tell them apart' },
  ]);
  expect(problemsWith({ pouches: twice(KITCHEN.pouches) })[0]?.field).toBe('pouches[2].label');
  expect(problemsWith({ absorbers: twice(KITCHEN.absorbers) })[0]?.field).toBe('absorbers[2].label');
});

it('says once how long a food keeps', () => {
  const [line, other] = KITCHEN.storage;
  expect(problemsWith({ storage: [line!, other!, { ...line!, months: 3 }] })).toEqual([
    {
      field: 'storage[2].months',
      message:
        'stands in the table twice: freeze-dried, lean, foil pouch, with absorber; leave one of the two',
    },
  ]);
});
