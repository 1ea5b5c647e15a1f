import { z } from 'zod';
import { say, sayLater } from '../../texts/say.ts';
import { LotCode } from './pouch-lot.ts';
import { TRAIL_NOTE_KINDS } from './words.ts';

/** The most notes that can be sent at once. */
export const MOST_TRAIL_NOTES = 500;

/** One thing noted on the trail, often without a network; its id lets it be sent again without counting twice. */
export const TrailNote = z
  .strictObject({
    id: z.uuid(sayLater('must be a UUID')).describe('Made where the note was taken'),
    at: z.iso
      .datetime({ offset: true, ...sayLater('must be an instant such as 2026-07-04T18:30:00Z') })
      .describe('When it was noted'),
    kind: z.enum(TRAIL_NOTE_KINDS),
    code: LotCode,
    pouches: z
      .int(sayLater('must be a whole number'))
      .min(0, sayLater('must not be negative'))
      .max(1000, sayLater('must be at most 1000'))
      .default(0)
      .describe('Pouches eaten or brought home; of what is left over, the pouches it comes from'),
    servings: z
      .number(sayLater('must be a number'))
      .positive(sayLater('must be more than 0'))
      .max(1000, sayLater('must be at most 1000'))
      .optional()
      .describe('Servings left over'),
    text: z.string().trim().max(500, sayLater('must be at most 500 characters')).default(''),
  })
  .superRefine(({ kind, pouches, servings }, context) => {
    const missing = (path: string, message: string) =>
      context.addIssue({ code: 'custom', path: [path], message });
    if (kind === 'left over' && servings === undefined)
      missing('servings', say('is missing; say how many servings were left over'));
    if (kind !== 'left over' && pouches === 0)
      missing('pouches', say('must be at least {least}', { least: 1 }));
  });
export type TrailNote = z.infer<typeof TrailNote>;

/** Body of `POST /trips/[id]/notes.json`. */
export const TrailNotesRequest = z.strictObject({
  notes: z
    .array(TrailNote)
    .max(
      MOST_TRAIL_NOTES,
      sayLater('must be at most {most} notes; send the others after these', { most: MOST_TRAIL_NOTES }),
    ),
});

/** What became of one note that was sent. `known` ones arrived before and changed nothing now. */
export type TrailNoteResult = {
  readonly id: string;
  readonly outcome: 'entered' | 'known' | 'conflict';
  /** For the user: why it did not fit. */
  readonly message?: string;
};
