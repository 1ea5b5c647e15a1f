import { isHttpError } from '@sveltejs/kit';
import { afterEach, expect, test, vi } from 'vitest';
import { UserError } from './errors.ts';
import { sayingWhen, toHttpError } from './to-http-error.ts';

afterEach(() => vi.restoreAllMocks());

function thrownBy(work: () => never): unknown {
  try {
    return work();
  } catch (error) {
    return error;
  }
}

test.each([
  ['NotFound', 404],
  ['Conflict', 409],
  ['StaleVersion', 409],
  ['Refused', 422],
  ['TooLarge', 413],
  ['Busy', 503],
  ['Unusable', 500],
] as const)('%s becomes status %i with its message', (code, status) => {
  const log = vi.spyOn(console, 'error').mockImplementation(() => {});
  const thrown = thrownBy(() => toHttpError(new UserError(code, 'Do this instead.')));
  expect(isHttpError(thrown, status)).toBe(true);
  expect(thrown).toMatchObject({ body: { message: 'Do this instead.' } });
  // That many asked at once is no failure; that nothing can be stored is.
  expect(log).toHaveBeenCalledTimes(code === 'Unusable' ? 1 : 0);
});

test('any other error passes as it is', () => {
  const error = new Error('internal');
  expect(thrownBy(() => toHttpError(error))).toBe(error);
});

test('what was busy says when to ask again', () => {
  expect(sayingWhen(new Response('', { status: 503 })).headers.get('retry-after')).toBe('10');
  expect(sayingWhen(new Response('', { status: 500 })).headers.has('retry-after')).toBe(false);
});
