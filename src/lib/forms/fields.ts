import { writesDecimalComma } from '$lib/texts/locale.ts';
import { say, type Text } from '$lib/texts/say.ts';
import type { RefusedForm } from './read-form.ts';

/** What the field components take from a page's `form`; `null` where nothing was sent yet. */
export type FormState = Partial<RefusedForm> | null | undefined;

/** A field as it was entered, and as somebody else saved it meanwhile. */
export type Difference = { readonly label: string; readonly mine: string; readonly theirs: string };

/** @returns the id of the control of a field; what is wrong with it has the same id with `-error`. */
export function fieldId(name: string): string {
  return `field-${name.replace(/[^A-Za-z0-9]+/g, '-')}`;
}

/** @returns what a field shows: what was typed before the refusal, else the stored value. */
export function shownValue(form: FormState, name: string, value: string | undefined): string {
  return form?.entered ? (form.entered[name]?.[0] ?? '') : (value ?? '');
}

/** @returns what a field of figures shows: as `shownValue`, a stored number as the language writes it. */
export function shownFigure(form: FormState, name: string, value: string | undefined): string {
  return shownValue(form, name, value === undefined ? undefined : fieldFigure(value));
}

/** @returns a stored number as it stands in a field: three decimals after a comma could be thousands, so they get a fourth. */
export function fieldFigure(stored: string): string {
  if (!writesDecimalComma() || !/^-?\d+\.\d+$/.test(stored)) return stored;
  const written = stored.replace('.', ',');
  return /,\d{3}$/.test(written) ? `${written}0` : written;
}

/** @returns the boxes of a group that are ticked, on the same rule. */
export function shownChoices(form: FormState, name: string, chosen: readonly string[]): readonly string[] {
  return form?.entered ? (form.entered[name] ?? []) : chosen;
}

/** @returns what is wrong with a field or with one of its parts, such as `meals[1]` of `meals`. */
export function problemWith(form: FormState, name: string): string | undefined {
  return form?.problems?.find(({ field }) => field === name || field.startsWith(`${name}[`))?.message;
}

/** @returns the message as a sentence of its own. */
export function sentence(text: string): string {
  const capital = text.charAt(0).toUpperCase() + text.slice(1);
  return /[.!?]$/.test(capital) ? capital : `${capital}.`;
}

/** @returns the choices of a list, each with what it is called. */
export const saidChoices = <Code extends string>(
  list: readonly { readonly code: Code; readonly label: Text }[],
): { code: Code; label: string }[] => list.map(({ code, label }) => ({ code, label: say(label) }));
