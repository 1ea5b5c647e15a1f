import { expect, it } from 'vitest';
import { isAllowed, packagesOf } from './licences.ts';

it.each([
  ['MIT', true],
  ['(MIT OR GPL-3.0)', true],
  ['(MIT AND GPL-3.0)', false],
  ['GPL-3.0', false],
  ['AGPL-3.0-only', false],
  ['UNLICENSED', false],
  ['none stated', false],
])('%s: %s', (licence, allowed) => {
  expect(isAllowed(licence)).toBe(allowed);
});

it('lists each version once, and as one that runs where it runs anywhere', () => {
  const packages = packagesOf({
    packages: {
      '': { version: '1.0.0' },
      'node_modules/b': { version: '1.0.0', license: 'MIT', dev: true },
      'node_modules/a/node_modules/b': { version: '1.0.0', license: 'MIT' },
      'node_modules/@scope/a': { version: '2.0.0' },
    },
  });
  expect(packages).toEqual([
    { name: '@scope/a', version: '2.0.0', licence: 'none stated', isDev: false },
    { name: 'b', version: '1.0.0', licence: 'MIT', isDev: false },
  ]);
});
