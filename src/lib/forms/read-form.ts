import type { z } from 'zod';
import { problemsOf, type Problem } from '$lib/presentation/problems.ts';
import { toCore } from '$lib/planning/units/convert.ts';
import { moneyFieldValue, moneyToMinor } from '$lib/presentation/money.ts';
import { feetAndInchesM, statureValue } from '$lib/planning/units/stature.ts';
import { fieldToCore, fieldValue, type Quantity, type UnitSystem } from '$lib/presentation/show.ts';
import { writesDecimalComma } from '$lib/texts/locale.ts';
import { say } from '$lib/texts/say.ts';

/** What a person typed, by field name, just as they typed it. */
export type Entered = Readonly<Record<string, readonly string[]>>;

/** What an action hands back when it refuses: what was entered, and what is wrong with which field. */
export type RefusedForm = { readonly entered: Entered; readonly problems: readonly Problem[] };

/** @returns a bare number as a field holds it. */
export const bareField = (value: number | undefined): string[] => [value === undefined ? '' : String(value)];

type NumberField = {
  /** What is measured, where the field is shown in a unit of the unit system. Left out: a bare number. */
  readonly quantity?: Quantity;
  /**
   * The value that the field was filled with, in the unit of the core. A field that still says the same is read as
   * exactly this value, so that opening and saving a form in ounces does not shift the grams.
   */
  readonly stored?: number | undefined;
};

/**
 * Reads the fields of a submitted form into values of the core, and collects what cannot be read.
 *
 * A field is named like its place in the model, `party[0].maxLoadG`, so that the problems of a zod schema find it.
 * An empty field is `undefined`: whether it may be left out is for the schema to say.
 */
export class FormReader {
  readonly entered: Entered;
  readonly problems: Problem[] = [];
  /** In which the form was filled in. */
  readonly system: UnitSystem;
  readonly #unitsChanged: boolean;

  /**
   * @param system the unit system of the settings. A form that says in its field `shownIn` which one it was opened in is read in that.
   */
  constructor(form: FormData, system: UnitSystem) {
    const entered: Record<string, string[]> = {};
    // Names are those of our fields; others, such as `__proto__`, are no place to put a text.
    for (const [name, value] of form)
      if (typeof value === 'string' && !(name in Object.prototype)) (entered[name] ??= []).push(value);
    this.entered = entered;
    const openedIn = entered['shownIn']?.[0];
    this.system = openedIn === 'metric' || openedIn === 'us' ? openedIn : system;
    this.#unitsChanged = this.system !== system;
  }

  /** @returns the text without blanks around it, its lines ended by \n; `undefined` where it is empty. */
  text(name: string): string | undefined {
    return this.entered[name]?.[0]?.replace(/\r\n?/g, '\n').trim() || undefined;
  }

  /** @returns every ticked box of a group, or every field of this name. */
  choices(name: string): string[] {
    return [...(this.entered[name] ?? [])];
  }

  /** @returns the number in the unit of the core; `undefined` where the field is empty or holds no number. */
  number(name: string, { quantity, stored }: NumberField = {}): number | undefined {
    const text = this.text(name);
    if (text === undefined) return undefined;
    if (
      stored !== undefined &&
      text === (quantity ? fieldValue(stored, quantity, this.system) : String(stored))
    )
      return stored;
    const typed = this.#typedNumber(name, text);
    if (typed === undefined || !quantity) return typed;
    // Twelve digits hold what was typed and drop the binary dust of the conversion: 35 % is 0.35.
    return Number(fieldToCore(typed, quantity, this.system).toPrecision(12));
  }

  /** @returns an amount of money in minor units of `currency`; `undefined` as with `number`. */
  money(name: string, currency: string, stored?: number): number | undefined {
    const text = this.text(name);
    if (text === undefined) return undefined;
    if (stored !== undefined && text === moneyFieldValue(stored, currency)) return stored;
    const typed = this.#typedNumber(name, text);
    return typed === undefined ? undefined : moneyToMinor(typed, currency);
  }

  /** @returns a body height in m, from centimetres or from feet and inches; `undefined` as with `number`. */
  stature(name: string, stored?: number): number | undefined {
    const text = this.text(name);
    if (text === undefined) return undefined;
    if (stored !== undefined && text === statureValue(stored, this.system)) return stored;
    if (this.system === 'metric') {
      const typed = this.#typedNumber(name, text);
      return typed === undefined ? undefined : Number(toCore(typed, 'cm').toPrecision(12));
    }
    const heightM = feetAndInchesM(text);
    if (heightM === undefined)
      this.problems.push({
        field: name,
        message: say('"{text}" is not a height in feet and inches; write it as 5 ft 10 in', { text }),
      });
    return heightM;
  }

  /** Adds the problems of a schema. A field has one message, the first: those that could not even be read have theirs. */
  add(problems: readonly Problem[]): void {
    const named = new Set(this.problems.map(({ field }) => field));
    for (const { field, message, missing } of problems) {
      if (field !== '' && named.has(field)) continue;
      named.add(field);
      this.problems.push({
        field,
        message: missing && this.#isEmpty(field) ? say('please fill this in') : message,
      });
    }
  }

  /**
   * Takes what a schema made of the fields, or its problems.
   *
   * @param place puts the problems where the form has their fields
   * @returns `undefined` where `problems` says what has to be mended
   */
  accept<Value>(
    result: z.ZodSafeParseResult<Value>,
    place: (problems: readonly Problem[]) => readonly Problem[] = (problems) => problems,
  ): Value | undefined {
    if (!result.success) this.add(place(problemsOf(result.error)));
    return result.success && this.problems.length === 0 ? result.data : undefined;
  }

  /** @returns what an action hands to `fail`. The page shows it in the units of the settings: where they are others by now, it says so. */
  refused(): RefusedForm {
    if (this.#unitsChanged)
      this.add([
        {
          field: '',
          message: say(
            'the units were changed in Settings while this page was open. The numbers below are as you typed them: check each one, then save again',
          ),
        },
      ]);
    return { entered: this.entered, problems: this.problems };
  }

  /** Whether nothing was entered for a field, or for the group that it is one box of, such as `meals[1]` of `meals`. */
  #isEmpty(field: string): boolean {
    return this.text(field) === undefined && this.text(field.replace(/\[\d+\]$/, '')) === undefined;
  }

  #typedNumber(name: string, text: string): number | undefined {
    const typed = typedNumber(text);
    if (typeof typed === 'number') return typed;
    this.problems.push({ field: name, message: typed.problem });
    return undefined;
  }
}

/**
 * Reads a number as people type it: a point or a comma before the decimals, blanks between thousands.
 * A comma that may be either, as in "1,200", is asked about instead of guessed.
 */
export function typedNumber(text: string): number | { readonly problem: string } {
  const compact = text.replace(/[\s\u00a0\u202f']/g, '').replace('−', '-');
  if (/^[-+]?\d{1,3}(,\d{3})+\.\d+$/.test(compact)) return Number(compact.replaceAll(',', ''));
  if (/^[-+]?[1-9]\d{0,2},\d{3}$/.test(compact))
    return {
      problem: say('"{text}" may mean {whole} or {decimal}; write it without the comma, or with a point', {
        text,
        whole: compact.replace(',', ''),
        decimal: compact.replace(',', '.'),
      }),
    };
  // Whoever writes a comma before decimals may well write a point between thousands.
  if (writesDecimalComma() && /^[-+]?[1-9]\d{0,2}\.\d{3}$/.test(compact))
    return {
      problem: say('"{text}" may mean {whole} or {decimal}; write it without the point, or with a comma', {
        text,
        whole: compact.replace('.', ''),
        decimal: compact.replace('.', ','),
      }),
    };
  if (/^[-+]?(\d+([.,]\d*)?|[.,]\d+)$/.test(compact)) return Number(compact.replace(',', '.'));
  return { problem: say('"{text}" is not a number. Use digits only, such as 120 or 4.5', { text }) };
}

/** @returns the object without the keys whose value is `undefined`, as a schema with left-out fields wants it. */
export function withoutUndefined<T extends object>(object: T): { [K in keyof T]: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(object).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]: Exclude<T[K], undefined>;
  };
}
