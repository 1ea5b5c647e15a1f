import { say } from '../../texts/say.ts';
import { UserError } from '../errors.ts';

/** A file that this program did not write. */
export const noCopy = (name: string): UserError =>
  new UserError(
    'Refused',
    say('"{name}" is not a Ridgelarder backup or export. Nothing was changed. Is it the right file?', {
      name,
    }),
  );

/** @param change the one that is not known here */
export const fromNewer = (name: string, change: string): UserError =>
  new UserError(
    'Refused',
    say(
      '"{name}" was written by a newer Ridgelarder (its change "{change}" is not known here), so nothing was taken from it. Update this one first.',
      { name, change },
    ),
  );
