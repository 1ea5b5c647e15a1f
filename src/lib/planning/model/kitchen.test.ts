import { expect, it } from 'vitest';
import { faultsOf } from './faults.ts';
import { defaultKitchen, Kitchen } from './kitchen.ts';

const KITCHEN = defaultKitchen();
const faultsWith = (change: Partial<Kitchen>) => {
  const result = Kitchen.safeParse({ ...KITCHEN, ...change });
  return result.success ? [] : faultsOf(result.error);
};

it('takes its own usual values', () => {
  expect(faultsWith({})).toEqual([]);
});

it('tells apart what is called by its name, and names the later one', () => {
  const twice = <Line>([first, second]: readonly Line[]): Line[] => [first!, second!, first!];
  expect(faultsWith({ dryers: twice(KITCHEN.dryers) })).toEqual([
    { field: 'dryers[2].name', code: 'listed-twice', params: { name: 'freeze dryer' } },
  ]);
  expect(faultsWith({ pouches: twice(KITCHEN.pouches) })[0]?.field).toBe('pouches[2].label');
  expect(faultsWith({ absorbers: twice(KITCHEN.absorbers) })[0]?.field).toBe('absorbers[2].label');
});

it('says once how long a food keeps', () => {
  const [line, other] = KITCHEN.storage;
  expect(faultsWith({ storage: [line!, other!, { ...line!, months: 3 }] })).toEqual([
    {
      field: 'storage[2].months',
      code: 'storage-rule-twice',
      params: { process: 'freeze-dried', fatClass: 'lean', barrier: 'foil pouch', absorber: true },
    },
  ]);
});
