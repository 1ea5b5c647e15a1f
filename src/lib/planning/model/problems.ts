import { z } from 'zod';
import { say, text, type Text } from '../../texts/say.ts';

/** What is wrong with one field of an input: where, what, and what would be right. */
export type Problem = {
  readonly field: string;
  readonly message: string;
  /** Nothing is there; a form says so of an empty field, and no more. */
  readonly missing?: true;
};

/** `['party', 0, 'name']` → `party[0].name`; the whole input is `(input)`. */
export function fieldPath(path: readonly PropertyKey[]): string {
  const joined = path.map((part) => (typeof part === 'number' ? `[${part}]` : `.${String(part)}`)).join('');
  return joined.replace(/^\./, '') || '(input)';
}

const KINDS: Readonly<Record<string, Text>> = {
  string: text('must be a text'),
  number: text('must be a number'),
  int: text('must be a whole number'),
  boolean: text('must be true or false'),
  array: text('must be a list'),
  object: text('must be an object with fields'),
};

/** What is said where a schema has no message of its own. */
function usualMessage(issue: z.core.$ZodRawIssue): string {
  switch (issue.code) {
    case 'invalid_type':
      return say(KINDS[issue.expected] ?? text('is of the wrong kind'));
    case 'too_small':
      return issue.origin === 'number' || issue.origin === 'int'
        ? say('must be at least {least}', { least: Number(issue.minimum) })
        : say('is too short');
    case 'too_big':
      return issue.origin === 'number' || issue.origin === 'int'
        ? say('must be at most {most, number}', { most: Number(issue.maximum) })
        : issue.origin === 'string'
          ? say('must be at most {most, number} characters', { most: Number(issue.maximum) })
          : say('must be at most {most, number} entries', { most: Number(issue.maximum) });
    default:
      return say('is not of a form that is known');
  }
}
z.config({ customError: usualMessage });

function plainMessage(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case 'unrecognized_keys':
      return say(
        'has the unknown {count, plural, one {field} other {fields}} {fields}; check the spelling or remove it',
        {
          count: issue.keys.length,
          fields: [
            ...issue.keys.slice(0, MOST_FIELDS_NAMED).map((key) => `"${quoted(key)}"`),
            ...(issue.keys.length > MOST_FIELDS_NAMED ? ['…'] : []),
          ].join(', '),
        },
      );
    case 'invalid_value': {
      const known = issue.values.map(String).join(', ');
      return issue.input === undefined
        ? say('must be one of: {known}', { known })
        : say('must be one of: {known}; found "{found}"', { known, found: quoted(shown(issue.input)) });
    }
    case 'invalid_type':
      return issue.input === undefined
        ? say('is missing; it {must}', { must: issue.message })
        : issue.message;
    default:
      return issue.message;
  }
}

function isMissing(issue: z.core.$ZodIssue): boolean {
  if (issue.code === 'custom') return issue.params?.['missing'] === true;
  const byItsValue = ['invalid_type', 'invalid_value', 'invalid_format'].includes(issue.code);
  return byItsValue && (issue.input === undefined || issue.input === '');
}

/** So many problems of one input are named at most; whoever mends them sees the others then. */
export const MOST_PROBLEMS = 100;
/** What was found is quoted up to so many characters, and so many unknown fields are named. */
const MOST_QUOTED = 80;
const MOST_FIELDS_NAMED = 10;

/** What an input is shown as: an object could say of itself what it is as text. */
const shown = (input: unknown): string =>
  typeof input === 'object' && input !== null ? (Array.isArray(input) ? '[…]' : '{…}') : String(input);
const quoted = (found: string): string =>
  found.length > MOST_QUOTED ? `${found.slice(0, MOST_QUOTED)}…` : found;

/** The problems of a failed `safeParse(input, { reportInput: true })`, one per field, in the order of the fields, at most `MOST_PROBLEMS`. */
export function problemsOf(error: z.ZodError): Problem[] {
  return error.issues.slice(0, MOST_PROBLEMS).map((issue) => ({
    field: fieldPath(issue.path),
    message: plainMessage(issue),
    ...(isMissing(issue) && { missing: true }),
  }));
}
