import { z } from 'zod';
import { problemsOf } from '../presentation/problems.ts';
import { UserError } from './errors.ts';
import { say } from '../texts/say.ts';

/**
 * Reads back what was stored as JSON, and lets nothing through that its schema does not know.
 *
 * @param what names it for the user, at the start of a sentence, where it is needed
 * @throws UserError `Unusable` with the first problem
 */
export function parseStored<Schema extends z.ZodType>(
  schema: Schema,
  json: string,
  what: () => string,
): z.output<Schema> {
  const unusable = (problem: string, cause: unknown) =>
    new UserError(
      'Unusable',
      say('{what} cannot be read: {problem}. Put back a copy of the data.', { what: what(), problem }),
      { cause },
    );
  let value: unknown;
  try {
    value = JSON.parse(json);
  } catch (error) {
    throw unusable(say('it is not JSON'), error);
  }
  const parsed = schema.safeParse(value, { reportInput: true });
  if (parsed.success) return parsed.data;
  const [problem] = problemsOf(parsed.error);
  throw unusable(
    problem ? `${problem.field} ${problem.message}` : say('it is of another form'),
    parsed.error,
  );
}
