import { say, text, type Text } from '../../texts/say.ts';
import { UserError, type UserErrorCode } from '../errors.ts';

type Words = readonly [code: UserErrorCode, what: Text];

const LOST: Words = [
  'Busy',
  text(
    '{name} broke off the connection. Whether the last change was kept shows once the page is opened again.',
  ),
];
const NO_ENTRY: Words = [
  'Unusable',
  text(
    '{name} does not let this program in. Check user name and password in DATABASE_URL, and what pg_hba.conf allows, or choose another database with DATABASE_URL.',
  ),
];
/** It may be starting again; whoever asks is told when to come back. */
const UNREACHABLE: Words = [
  'Busy',
  text(
    '{name} cannot be reached. Is PostgreSQL running there? Check host and port in DATABASE_URL, or choose another database with DATABASE_URL.',
  ),
];
const STARTING: Words = [
  'Busy',
  text('{name} is starting or stopping; nothing was changed. Try again in a moment.'),
];
const FULL: Words = [
  'Unusable',
  text('{name} has no room left; nothing of the last change was kept. Free some space there and try again.'),
];
const NOT_TEXT: Words = [
  'Refused',
  text(
    '{name} cannot store one of the characters that were entered; nothing was changed. Leave out signs that cannot be seen, and use a database whose encoding is UTF8.',
  ),
];

/** SQLSTATE (PostgreSQL documentation, appendix A), or code of the network; the first that an error's code begins with. */
const BY_CODE: readonly (readonly [start: string, words: Words])[] = [
  ['ECONNREFUSED', UNREACHABLE],
  ['ENOTFOUND', UNREACHABLE],
  ['EAI_AGAIN', UNREACHABLE],
  ['EHOSTUNREACH', UNREACHABLE],
  ['ENETUNREACH', UNREACHABLE],
  ['ENOENT', UNREACHABLE],
  ['ETIMEDOUT', ['Busy', text('{name} does not answer; nothing was changed. Try again in a moment.')]],
  ['ECONNRESET', LOST],
  ['EPIPE', LOST],
  ['28', NO_ENTRY],
  [
    '3D000',
    [
      'Unusable',
      text(
        '{name} does not exist. Make it with "createdb" or the tool of your provider, or choose another database with DATABASE_URL.',
      ),
    ],
  ],
  [
    '42501',
    [
      'Unusable',
      text(
        '{name} does not allow its user to do this. Let that user own its tables ("grant create on schema public to …" before the first start), or choose another database with DATABASE_URL.',
      ),
    ],
  ],
  [
    '25006',
    ['Unusable', text('{name} can only be read; is it a standby? Name the primary in DATABASE_URL.')],
  ],
  [
    '53300',
    [
      'Busy',
      text(
        '{name} has no connection left; nothing was changed. Try again in a moment. Or raise its max_connections.',
      ),
    ],
  ],
  ['53100', FULL],
  [
    '53',
    [
      'Busy',
      text('{name} is out of working space or other resources; nothing was changed. Try again in a moment.'),
    ],
  ],
  [
    '55P03',
    [
      'Busy',
      text(
        '{name} was kept busy by another program for too long; nothing was changed. Try again in a moment.',
      ),
    ],
  ],
  [
    '57014',
    [
      'Busy',
      text('{name} took too long over this and ended it; nothing was changed. Try again in a moment.'),
    ],
  ],
  ['57P03', STARTING],
  ['57P', LOST],
  ['25P03', LOST],
  ['08', LOST],
  ['22021', NOT_TEXT],
  ['22P05', NOT_TEXT],
];

/** What the driver itself throws has no code. */
const BY_MESSAGE: readonly (readonly [pattern: RegExp, words: Words])[] = [
  [/timeout/, ['Busy', text('{name} does not answer; nothing was changed. Try again in a moment.')]],
  [/password/, NO_ENTRY],
  [
    /SSL|TLS|certificate/,
    [
      'Unusable',
      text(
        '{name} cannot be reached by an encrypted connection. Check sslmode and the certificates in DATABASE_URL, or choose another database with DATABASE_URL.',
      ),
    ],
  ],
  [/terminated|not queryable|Connection/, LOST],
];

const codeOf = (error: Error): string => ('code' in error ? String(error.code) : '');

/**
 * Whether a change failed only because others made theirs at the same time, so that it can be made once more: serialisation failure,
 * deadlock, or a name that was taken since it was looked for (PostgreSQL documentation, 13.5).
 */
export const isConflict = (error: unknown): boolean =>
  error instanceof Error && ['40001', '40P01', '23505'].includes(codeOf(error));

/**
 * @param error what the driver threw
 * @param name of the database, without its password
 * @returns a UserError that names the database and says what to do; any other error as it is
 */
export function postgresError(error: unknown, name: string): unknown {
  if (!(error instanceof Error) || isConflict(error)) return error;
  const code = codeOf(error);
  const [, words] =
    BY_CODE.find(([start]) => code.startsWith(start)) ??
    BY_MESSAGE.find(([pattern]) => !/^\w{5}$/.test(code) && pattern.test(error.message)) ??
    [];
  if (!words) return error;
  const [kind, what] = words;
  return new UserError(kind, say(what, { name: `${name[0]?.toUpperCase()}${name.slice(1)}` }), {
    cause: error,
  });
}
