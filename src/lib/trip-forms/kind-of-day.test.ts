import { expect, it } from 'vitest';
import { withNewKind } from './kind-of-day.ts';

const leg = { distanceM: 12_000, climbM: 400, descentM: 100 };

it.each([
  ['a rest day', { kind: 'rest', walkingH: 7, ...leg }, { walkingH: 7, ...leg }, { kind: 'rest' }],
  ['a town day on a route', { kind: 'town', endsAt: 'Lake' }, { endsAt: 'Lake' }, { kind: 'town' }],
  ['half of the hours', { kind: 'short', walkingH: 7 }, { walkingH: 7 }, { kind: 'short', walkingH: 3.5 }],
  [
    'hours that were entered with the kind',
    { kind: 'rest', walkingH: 2 },
    { walkingH: 7 },
    { kind: 'rest', walkingH: 2 },
  ],
  [
    'hours that were entered later',
    { kind: 'short', walkingH: 5 },
    { kind: 'short', walkingH: 5 },
    { kind: 'short', walkingH: 5 },
  ],
  ['a hut night', { kind: 'hut night', walkingH: 7 }, { walkingH: 7 }, { kind: 'hut night', walkingH: 7 }],
  ['a walking day again', { walkingH: 3.5 }, { kind: 'short', walkingH: 3.5 }, { walkingH: 3.5 }],
  ['the air of a rest day', { kind: 'rest', airTemperatureC: 9 }, {}, { kind: 'rest', airTemperatureC: 9 }],
] as const)('%s', (_, day, stored, expected) => expect(withNewKind(day, stored)).toEqual(expected));
