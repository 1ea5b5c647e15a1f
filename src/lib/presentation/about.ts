import { say } from '../texts/say.ts';

/** @returns a value that is an estimate, so that nobody takes it for a figure that somebody stated. */
export const about = (value: string): string => say('about {value}', { value });

/**
 * @param of a lot, or what of a lot is an estimate
 * @returns `value`, marked where the field is an estimate
 */
export function aboutWhere(
  { estimated }: { readonly estimated?: Estimated | undefined },
  field: string,
  value: string,
): string {
  const fields = Array.isArray(estimated) ? estimated : Object.keys(estimated ?? {});
  return fields.includes(field) ? about(value) : value;
}
/** The fields of a lot that are estimates, as a list or with what they rest on. */
export type Estimated = readonly string[] | { readonly [field: string]: unknown };
