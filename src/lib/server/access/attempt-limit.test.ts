import { expect, test } from 'vitest';
import { AttemptLimit, networkOf } from './attempt-limit.ts';

const MINUTE_MS = 60_000;

function clocked() {
  let now = 0;
  return { limit: new AttemptLimit(() => now), pass: (ms: number) => (now += ms) };
}

test('five attempts of one address are heard, the sixth waits until the first is a quarter of an hour old', () => {
  const { limit, pass } = clocked();
  for (let attempt = 0; attempt < 5; attempt += 1) {
    expect(limit.begin('192.0.2.1')).toBeUndefined();
    pass(MINUTE_MS);
  }
  expect(limit.begin('192.0.2.1')).toBe(10 * 60);
  expect(limit.begin('192.0.2.2')).toBeUndefined();
  pass(10 * MINUTE_MS - 1);
  expect(limit.begin('192.0.2.1')).toBe(1);
  pass(1);
  expect(limit.begin('192.0.2.1')).toBeUndefined();
  expect(limit.begin('192.0.2.1')).toBe(60);
});

test('thirty attempts are heard from all together', () => {
  const { limit, pass } = clocked();
  for (let host = 0; host < 30; host += 1) expect(limit.begin(`192.0.2.${host}`)).toBeUndefined();
  pass(MINUTE_MS);
  expect(limit.begin('198.51.100.1')).toBe(14 * 60);
  pass(14 * MINUTE_MS);
  expect(limit.begin('198.51.100.1')).toBeUndefined();
});

test('who knows the passphrase is not held up by having mistyped it', () => {
  const { limit } = clocked();
  for (let attempt = 0; attempt < 5; attempt += 1) limit.begin('192.0.2.1');
  limit.succeeded('192.0.2.1');
  expect(limit.begin('192.0.2.1')).toBeUndefined();
});

test.each([
  ['192.0.2.1', '192.0.2.1'],
  ['::ffff:192.0.2.1', '192.0.2.1'],
  ['2001:db8:1:2:3:4:5:6', '2001:db8:1:2'],
  ['2001:0DB8:0001:2::6', '2001:db8:1:2'],
  ['2001:db8::6', '2001:db8:0:0'],
  ['fe80::1%eth0', 'fe80:0:0:0'],
  ['::1', '0:0:0:0'],
  ['<script>', 'unknown'],
])('%s is counted as %s', (address, network) => expect(networkOf(address)).toBe(network));
