import { expect, test } from 'vitest';
import { problemWithPassphrase } from './passphrase-strength.ts';

test.each([
  'walnut ladder seven fog',
  'kx9#Tq2!vLm4',
  'Fußweg über den grünen Grat',
  '🥾🏔️🍲🥄🌧️🧭🪵🔥🧦🗺️🎒⛺',
])('%s can be set', (text) => expect(problemWithPassphrase(text)).toBeUndefined());

test('one that is short says how long it has to be', () => {
  expect(problemWithPassphrase('kx9#Tq2!vLm')).toContain('has 11 characters, and needs at least 12');
  expect(problemWithPassphrase('')).toContain('has 0 characters');
  expect(problemWithPassphrase('🥾'.repeat(6))).toContain('has 6 characters');
  expect(problemWithPassphrase('x'.repeat(501))).toContain('500 are the most');
});

test.each([
  'passwordpassword',
  '123456789012',
  'qwertyuiopasdf',
  'aaaaaaaaaaaaaaaa',
  'iloveyouiloveyou',
  'unbelievable',
])('%s is among the first that anybody would try', (text) =>
  expect(problemWithPassphrase(text)).toContain('among the first'),
);
