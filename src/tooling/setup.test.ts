import { spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';
import { ROOT } from './run.ts';
import { stalePackages, withoutDevelopment } from './setup.mjs';

const locked = {
  '': { version: '0.1.0' },
  'node_modules/alpha': { version: '1.0.0' },
  'node_modules/beta': { version: '2.0.0' },
  'node_modules/beta/node_modules/alpha': { version: '0.9.0' },
  'node_modules/for-another-platform': { version: '3.0.0', optional: true },
};
const installed = {
  'node_modules/alpha': { version: '1.0.0' },
  'node_modules/beta': { version: '2.0.0' },
  'node_modules/beta/node_modules/alpha': { version: '0.9.0' },
};

test('an install that matches the lock file is left alone', () => {
  expect(stalePackages(locked, installed)).toEqual([]);
});

test('a fresh clone lacks every package but those of other platforms', () => {
  expect(stalePackages(locked, {})).toEqual([
    'node_modules/alpha',
    'node_modules/beta',
    'node_modules/beta/node_modules/alpha',
  ]);
});

test('another version, also of a nested package, is stale', () => {
  expect(
    stalePackages(locked, { ...installed, 'node_modules/beta/node_modules/alpha': { version: '1.0.0' } }),
  ).toEqual(['node_modules/beta/node_modules/alpha']);
});

test('to run the program, packages for tests and development may be missing', () => {
  const both = { ...locked, 'node_modules/for-tests': { version: '1.0.0', dev: true } };
  expect(stalePackages(both, installed)).toEqual(['node_modules/for-tests']);
  expect(stalePackages(withoutDevelopment(both), installed)).toEqual([]);
});

test('this very install is up to date, and setting up again says nothing', () => {
  const { status, stdout, stderr } = spawnSync('node', ['src/tooling/setup.mjs'], {
    cwd: ROOT,
    encoding: 'utf8',
  });
  expect({ status, stdout, stderr }).toEqual({ status: 0, stdout: '', stderr: '' });
});
