import type { WithdrawnLot } from '../planning/menu/withdraw-lot.ts';
import { say } from '../texts/say.ts';

/** What to do with a withdrawn lot of a trip. */
export const withdrawnText = ({ code, recipe, reason }: WithdrawnLot): string =>
  say(
    'Do not eat lot {code} ({recipe}): it was withdrawn. Take its pouches out of every box and pack. Reason: {reason}',
    { code, recipe, reason },
  );
