import { expect, test, vi } from 'vitest';
import { expectUserError } from '../test-data.ts';
import { AttemptLimit, networkOf, type Asker } from './attempt-limit.ts';

const MINUTE_MS = 60_000;

/** Whose clock runs on while strangers are made to wait, and otherwise as it is told. */
function clocked() {
  let now = 0;
  const limit = new AttemptLimit(
    () => now,
    async (ms) => (now += ms),
  );
  const tries = (asker: Asker, right = false) => limit.attempt(asker, async () => right);
  return { limit, tries, pass: (ms: number) => (now += ms), at: () => now };
}

const stranger = (key: string): Asker => ({ key, isStranger: true });
const known = (key: string): Asker => ({ key, isStranger: false });
const WRONG = { outcome: 'wrong' };
const RIGHT = { outcome: 'right' };
const later = (waitS: number) => ({ outcome: 'later', waitS });

test('five wrong ones are heard, and then each makes the wait twice as long, up to a quarter of an hour', async () => {
  const { tries, pass } = clocked();
  const asker = known('a');
  for (let attempt = 0; attempt < 5; attempt += 1) expect(await tries(asker)).toEqual(WRONG);
  for (const waitS of [30, 60, 120, 240, 480, 900, 900]) {
    expect(await tries(asker, true)).toEqual(later(waitS));
    pass(waitS * 1000 - 1);
    expect(await tries(asker, true)).toEqual(later(1));
    pass(1);
    expect(await tries(asker)).toEqual(WRONG);
  }
  expect(await tries(known('b'))).toEqual(WRONG);
});

test('many at once count before they are looked at', async () => {
  const { limit } = clocked();
  const looked = Promise.withResolvers<boolean>();
  const all = Array.from({ length: 8 }, () => limit.attempt(known('a'), () => looked.promise));
  looked.resolve(false);
  expect((await Promise.all(all)).filter(({ outcome }) => outcome === 'wrong')).toHaveLength(5);
});

test('who knows it is not held up by having mistyped it, and who stays away for a day begins anew', async () => {
  const { tries, pass } = clocked();
  for (const [asker, forgets] of [
    [known('a'), () => tries(known('a'), true)],
    [known('b'), async () => pass(24 * 60 * MINUTE_MS)],
  ] as const) {
    for (let attempt = 0; attempt < 4; attempt += 1) await tries(asker);
    await forgets();
    for (let attempt = 0; attempt < 5; attempt += 1) expect(await tries(asker)).toEqual(WRONG);
    expect(await tries(asker)).toEqual(later(30));
  }
});

test('strangers are slowed by what all of them got wrong, and nobody is kept out by it', async () => {
  const { tries, at, pass } = clocked();
  for (let host = 0; host < 30; host += 1) await tries(stranger(`${host}`));
  expect(at()).toBe(0);
  for (let host = 30; host < 100; host += 1) expect(await tries(stranger(`${host}`))).toEqual(WRONG);
  expect(at()).toBe(70 * 2000);
  expect(await tries(stranger('owner'), true)).toEqual(RIGHT);
  const before = at();
  expect(await tries(known('phone'), true)).toEqual(RIGHT);
  expect(at()).toBe(before);
  pass(15 * MINUTE_MS);
  for (let host = 200; host < 205; host += 1) await tries(stranger(`${host}`));
  expect(at()).toBe(before + 15 * MINUTE_MS);
});

test('strangers stand in a line that has an end, and who is known does not', async () => {
  const { limit, tries } = clocked();
  const looked = Promise.withResolvers<boolean>();
  let looking = 0;
  const inLine = Array.from({ length: 10 }, (_, host) =>
    limit.attempt(stranger(`${host}`), () => {
      looking += 1;
      return looked.promise;
    }),
  );
  await expectUserError(tries(stranger('owner'), true), 'Busy', 'try again in a few seconds');
  expect(await tries(known('phone'), true)).toEqual(RIGHT);
  await vi.waitFor(() => expect(looking).toBe(1)); // one at a time
  looked.resolve(false);
  await Promise.all(inLine);
  // Who was turned away was not counted.
  for (let attempt = 0; attempt < 5; attempt += 1) expect(await tries(stranger('owner'))).toEqual(WRONG);
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
