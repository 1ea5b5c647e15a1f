import type { Cookies } from '@sveltejs/kit';
import { beforeEach, expect, test, vi } from 'vitest';
import type { App } from '../app.ts';
import { onEachDatabase } from '../test-data.ts';
import { isPassphrase } from './passphrase.ts';
import { signIn } from './sign-in.ts';

const WORDS = 'walnut ladder seven fog';
const ORIGIN = 'http://192.0.2.20:4810';
const PHONE = '192.0.2.7';

// What scrypt makes of a text is tried out in passphrase.test.ts; here it would take a second for each attempt.
vi.mock('./passphrase.ts', { spy: true });
beforeEach(() => void vi.mocked(isPassphrase).mockImplementation(async (_, text) => text === WORDS));

/** A browser at an address, which keeps its cookies. */
function browserAt(app: App, address: string, kept = new Map<string, string>()) {
  const cookies = {
    get: (name: string) => kept.get(name),
    set: (name: string, value: string) => kept.set(name, value),
  } as unknown as Cookies;
  const tries = (text: string) =>
    signIn(
      {
        request: new Request(ORIGIN),
        url: new URL(ORIGIN),
        getClientAddress: () => address,
        locals: { app } as App.Locals,
        cookies,
      },
      text,
    );
  return { tries, kept };
}

onEachDatabase(({ openTestApp }) => {
  test('with wrong passphrases from many addresses nobody keeps out a browser that was signed in, this machine, or a new address', async () => {
    let now = Date.parse('2026-07-01T12:00:00Z');
    const app = await openTestApp(undefined, () => new Date(now));
    await app.access.passphrase.set(WORDS);
    const phone = browserAt(app, PHONE);
    expect(await phone.tries(WORDS)).toEqual({ outcome: 'right' });
    await app.access.sessions.endAll();

    // The clock runs on by itself, so that the strangers are past their pace.
    for (let host = 0; host < 40; host += 1) {
      now += 2000;
      await browserAt(app, `192.0.2.${100 + host}`).tries('guessed');
    }
    for (let wrong = 0; wrong < 6; wrong += 1) {
      now += 2000;
      await browserAt(app, PHONE).tries('guessed');
    }
    now += 2000;
    expect(await browserAt(app, PHONE).tries(WORDS)).toMatchObject({ outcome: 'later' });
    expect(await phone.tries(WORDS)).toEqual({ outcome: 'right' });
    expect(await browserAt(app, '127.0.0.1').tries(WORDS)).toEqual({ outcome: 'right' });
    expect(await browserAt(app, '192.0.2.99').tries(WORDS)).toEqual({ outcome: 'right' });
    const stored = await app.access.passphrase.stored();
    expect(await app.access.sessions.list(stored?.id ?? '')).toHaveLength(3);
  });

  test('the mark of a browser has few attempts too, wherever it is taken, and is worth nothing with another passphrase or altered', async () => {
    const app = await openTestApp();
    await app.access.passphrase.set(WORDS);
    const { kept, tries } = browserAt(app, PHONE);
    await tries(WORDS);
    const mark = kept.get('ridgelarder-device') ?? '';
    await tries(WORDS);
    expect(kept.get('ridgelarder-device')).toBe(mark);
    for (let wrong = 0; wrong < 5; wrong += 1)
      expect(await browserAt(app, `192.0.2.${wrong}`, kept).tries('guessed')).toEqual({ outcome: 'wrong' });
    expect(await tries(WORDS)).toMatchObject({ outcome: 'later' });

    const altered = new Map([['ridgelarder-device', `x${mark}`]]);
    expect(await browserAt(app, PHONE, altered).tries(WORDS)).toEqual({ outcome: 'right' });
    expect(altered.get('ridgelarder-device')).not.toBe(`x${mark}`);
    await app.access.passphrase.set(WORDS);
    expect(await tries(WORDS)).toEqual({ outcome: 'right' });
    expect(kept.get('ridgelarder-device')).not.toBe(mark);
  });
});
