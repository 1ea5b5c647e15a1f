import { noticeText } from '../presentation/notice-words.ts';
import type { Notice } from '../planning/model/notices.ts';
import type { TripPlan } from '../planning/model/trip-plan.ts';
import { NOTICE_SEVERITIES } from '../planning/model/words.ts';
import type { UnitSystem } from '../presentation/show.ts';
import { say } from '../texts/say.ts';

/** @returns the notices, the gravest first, otherwise in their order. */
export function worstFirst<T extends Pick<Notice, 'severity'>>(notices: readonly T[]): T[] {
  const rank = ({ severity }: T) => NOTICE_SEVERITIES.indexOf(severity);
  return [...notices].sort((a, b) => rank(a) - rank(b));
}

/** What is wrong with a plan in a few words: the gravest notice, and how many more there are as grave. */
export type Verdict =
  | { readonly severity: 'good'; readonly text: string; readonly more: 0 }
  | { readonly severity: Exclude<Notice['severity'], 'note'>; readonly text: string; readonly more: number };

/** @param units those of the reader */
export function verdictOf(plan: Pick<TripPlan, 'notices'>, units: UnitSystem): Verdict {
  const [worst] = worstFirst(plan.notices);
  if (!worst || worst.severity === 'note')
    return { severity: 'good', text: say('Enough food for everyone, and no pack over its limit.'), more: 0 };
  const { severity } = worst;
  const alike = plan.notices.filter((notice) => notice.severity === severity);
  return { severity, text: noticeText(worst, units), more: alike.length - 1 };
}
