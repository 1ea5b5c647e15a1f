import { page } from '$app/state';
import { reasonKey } from '$lib/reasons/reason';

/** @returns the id of a reason in the list that the page shows */
export const idOfReason = (key: string): string => `why-${key.replaceAll(/[^A-Za-z0-9]+/g, '-')}`;

/** @returns the id of the reason that the page gives for what a field holds unless somebody enters something else; for `aria-details` */
export function reasonId(name: string): string | undefined {
  const { reasons } = page.data;
  const key = reasons && reasonKey(reasons, name);
  return key === undefined ? undefined : idOfReason(key);
}
