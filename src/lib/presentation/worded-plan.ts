import { z } from 'zod';
import { noticeSchema, type Notice } from '../planning/model/notices.ts';
import { TripPlan } from '../planning/model/trip-plan.ts';
import type { UnitSystem } from './show.ts';
import { noticeText } from './notice-words.ts';
import { whyText } from './why-words.ts';

/** A notice with its text in the language and units of a reader. */
export type WordedNotice = Notice & { readonly text: string };

/** A plan as it leaves the program: every code with its text beside it. */
export const WordedPlan = TripPlan.extend({
  assumptions: z.array(
    TripPlan.shape.assumptions.element.extend({
      text: z.string().describe('Why it holds, in the language of whoever asked'),
    }),
  ),
  notices: z.array(
    noticeSchema<{ readonly text: string }>({
      text: z.string().describe('In the language and units of whoever asked'),
    }),
  ),
});
export type WordedPlan = z.infer<typeof WordedPlan>;

/** @returns the plan with the texts of its notices and assumptions, in the language around and the units of the reader. */
export function wordedPlan(plan: TripPlan, units: UnitSystem): WordedPlan {
  return {
    ...plan,
    assumptions: plan.assumptions.map((assumed) => ({ ...assumed, text: whyText(assumed.why) })),
    notices: wordedNotices(plan.notices, units),
  };
}

export const wordedNotices = (notices: readonly Notice[], units: UnitSystem): WordedNotice[] =>
  notices.map((notice) => ({ ...notice, text: noticeText(notice, units) }));
