import { z } from 'zod';
import { noticeSchema, type Notice } from '../planning/model/notices.ts';
import { Shortfall, ShoppingLine, TrailCard, TripPlan } from '../planning/model/trip-plan.ts';
import { cardCautions } from './card-cautions.ts';
import { exclusionTexts } from './exclusion-words.ts';
import type { UnitSystem } from './show.ts';
import { noticeText } from './notice-words.ts';
import { whyText } from './why-words.ts';

/** A notice with its text in the language and units of a reader. */
export type WordedNotice = Notice & { readonly text: string };

const Texts = z.array(z.string()).describe('In the language of whoever asked');

/** A plan as it leaves the program: every code with its text beside it. */
export const WordedPlan = TripPlan.extend({
  assumptions: z.array(
    TripPlan.shape.assumptions.element.extend({
      text: z.string().describe('Why it holds, in the language of whoever asked'),
    }),
  ),
  shortfall: Shortfall.extend({ shopping: z.array(ShoppingLine.extend({ exclusions: Texts })) }),
  card: TrailCard.extend({
    party: z.array(TrailCard.shape.party.element.extend({ excludes: Texts })),
    cautions: Texts,
  }),
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
    shortfall: {
      ...plan.shortfall,
      shopping: plan.shortfall.shopping.map((line) => ({
        ...line,
        exclusions: exclusionTexts(line.exclusions),
      })),
    },
    card: {
      ...plan.card,
      party: plan.card.party.map(({ eater, excludes }) => ({ eater, excludes: exclusionTexts(excludes) })),
      cautions: cardCautions(),
    },
    notices: wordedNotices(plan.notices, units),
  };
}

export const wordedNotices = (notices: readonly Notice[], units: UnitSystem): WordedNotice[] =>
  notices.map((notice) => ({ ...notice, text: noticeText(notice, units) }));
