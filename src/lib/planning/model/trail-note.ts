import { z } from 'zod';
import { wrong } from './faults.ts';
import { LotCode } from './pouch-lot.ts';
import { isVerdict, TRAIL_NOTE_KINDS } from './words.ts';

/** The most notes that can be sent at once. */
export const MOST_TRAIL_NOTES = 500;

/** One thing noted on the trail, often without a network; its id lets it be sent again without counting twice. */
export const TrailNote = z
  .strictObject({
    id: z.uuid(wrong('not-a-uuid')).describe('Made where the note was taken'),
    at: z.iso.datetime({ offset: true, error: wrong('not-an-instant') }).describe('When it was noted'),
    kind: z.enum(TRAIL_NOTE_KINDS),
    code: LotCode,
    pouches: z
      .int(wrong('not-whole'))
      .min(0, wrong('negative'))
      .max(1000, wrong('over', { most: 1000 }))
      .default(0)
      .describe('Pouches eaten or brought home; of what is left over, the pouches it comes from'),
    servings: z
      .number(wrong('not-a-number'))
      .positive(wrong('not-positive'))
      .max(1000, wrong('over', { most: 1000 }))
      .optional()
      .describe('Servings left over'),
    paidMinor: z
      .int(wrong('not-minor-units'))
      .min(0, wrong('negative'))
      .max(100_000_000, wrong('over', { most: 100_000_000, unit: 'minor' }))
      .optional()
      .describe('What was paid for all that was bought, in minor units of the currency'),
    text: z
      .string()
      .trim()
      .max(500, wrong('too-long', { most: 500 }))
      .default(''),
  })
  .superRefine(({ kind, pouches, servings }, context) => {
    const missing = (path: string, message: string) =>
      context.addIssue({ code: 'custom', path: [path], message });
    if (kind === 'left over' && servings === undefined)
      missing('servings', wrong('left-over-without-servings'));
    if (kind !== 'left over' && !isVerdict(kind) && pouches === 0)
      missing('pouches', wrong('under', { least: 1 }));
  });
export type TrailNote = z.infer<typeof TrailNote>;

/** Body of `POST /trips/[id]/notes.json`. */
export const TrailNotesRequest = z.strictObject({
  notes: z.array(TrailNote).max(MOST_TRAIL_NOTES, wrong('too-many-notes', { most: MOST_TRAIL_NOTES })),
});

/** What became of one note that was sent. `known` ones arrived before and changed nothing now. */
export type TrailNoteResult = {
  readonly id: string;
  readonly outcome: 'entered' | 'known' | 'conflict';
  /** For the user: why it did not fit. */
  readonly message?: string;
};
