const KEY = 'trail-notes';

/**
 * Whether this device holds notes of the trail that somebody should see. All that a page has to load before it knows whether the
 * code for them is wanted.
 */
class Noted {
  any = $state(false);

  /** Looks up what the last page left; call it in the browser. */
  recall(): void {
    this.any = quietly(() => localStorage.getItem(KEY) !== null) ?? false;
  }

  remember(any: boolean): void {
    this.any = any;
    quietly(() => (any ? localStorage.setItem(KEY, 'yes') : localStorage.removeItem(KEY)));
  }
}

/** Storage may be forbidden. */
function quietly<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch {
    return undefined;
  }
}

export const noted = new Noted();
