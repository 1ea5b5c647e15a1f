/** Why a value stands where nobody entered one, said in the language around. */
export type Reason = {
  /** What the value is of. */
  readonly label: string;
  /** The value as a person reads it; left out where the label says enough. */
  readonly value?: string;
  readonly why: string;
  /** Earlier trips put the value there. */
  readonly isLearned?: boolean | undefined;
};

/** Parts of docs/method.md, by their anchor. */
export type MethodPart =
  | 'route'
  | 'energy'
  | 'foods'
  | 'menu'
  | 'water'
  | 'stove-and-fuel'
  | 'packs'
  | 'kitchen'
  | 'what-is-missing'
  | 'drying-plan'
  | 'trail-card'
  | 'plausibility-of-a-lot'
  | 'labels';

/** Reasons that a page lists together, each under the name of its field or, where it has none, of what is taken for granted. */
export type ReasonList = {
  /** Where the equations and sources stand. */
  readonly method?: MethodPart;
  readonly of: Readonly<Record<string, Reason>>;
};

/** What a page's `load` gives as `reasons`: its lists by name. */
export type Reasons = Readonly<Record<string, ReasonList>>;

/**
 * The key of the reason of a field: its name, its name without places in lists (`trays.tareG` for `trays[2].tareG`), the last part of that, or
 * the list that it is in (`dryers`).
 *
 * @returns `undefined` where there is none
 */
export function reasonKey(reasons: Reasons, name: string): string | undefined {
  const plain = name.replaceAll(/\[\d+\]/g, '');
  const parts = plain.split('.');
  return [plain, parts.at(-1), parts[0]].find(
    (key) => key !== undefined && Object.values(reasons).some((list) => Object.hasOwn(list.of, key)),
  );
}
