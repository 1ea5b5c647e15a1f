import { isHttpError } from '@sveltejs/kit';
import { afterEach, expect, test, vi } from 'vitest';
import { UserError, type UserErrorCode } from './errors.ts';
import { toFailure, toHttpError } from './to-http-error.ts';

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

test('as a failure of a form it says the same, and when to ask again only where that is of use', () => {
  vi.spyOn(console, 'error').mockImplementation(() => {});
  const setHeaders = vi.fn();
  const failed = (code: UserErrorCode) =>
    toFailure({ setHeaders }, new UserError(code, 'Come again.'), (message) => ({ message }));
  expect(failed('Unusable')).toMatchObject({ status: 500, data: { message: 'Come again.' } });
  expect(setHeaders).not.toHaveBeenCalled();
  expect(failed('Busy')).toMatchObject({ status: 503, data: { message: 'Come again.' } });
  expect(setHeaders).toHaveBeenCalledWith({ 'retry-after': '10' });
  const other = new Error('internal');
  expect(() => toFailure({ setHeaders }, other, (message) => ({ message }))).toThrow(other);
});
