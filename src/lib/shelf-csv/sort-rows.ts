import { plainWords } from './fields.ts';
import { headingMeanings } from './headings.ts';
import { isValue } from './table-head.ts';
import { MEAL_VOCABULARY } from './vocabulary.ts';
import type { MealKind } from '../planning/model/words.ts';

/** Why a row of a table is no lot. */
export type NoLot = 'total' | 'headings again' | 'heading of rows' | 'note' | 'another table' | 'title';

const TOTAL =
  /^(?:(?:grand|running|sub) ?totals?|sub ?totals?|totals?|sums?|summen?|gesamt|gesamtsumme|gesamtzahl|insgesamt|zwischensumme|averages?|avg|mean|durchschnitt|mittelwert|mittel|o|overall|all together|alles zusammen|zusammen|count|anzahl)(?: (?:of|all|bags?|pouches|servings?|portions?|meals?|kcal|calories|weight|so far|in total|beutel|portionen|stuck|gewicht|kg|g|oz|lb|alle|number|anzahl|items?|rows?|each|per|bag|serving|stock|shelf|bestand|vorrat))*$/;

/** What of a table is no lot: totals, headings between rows, notes below. It reads from top to bottom. */
export class RowSorter {
  readonly #header: readonly string[];
  readonly #nameAt: number;
  readonly #figureAt: readonly number[];
  readonly #otherAt: readonly number[];
  readonly #sums = new Map<number, { sum: number; since: number }>();
  #isElsewhere = false;
  /** The meals that the heading above the rows names. */
  meals: readonly MealKind[] | undefined;

  /**
   * @param nameAt column of the names of dishes
   * @param figureAt columns of counts, weights, servings and figures, without which a row is no lot
   * @param otherAt other columns that are read
   */
  constructor(
    header: readonly string[],
    nameAt: number,
    figureAt: readonly number[],
    otherAt: readonly number[],
  ) {
    this.#header = header.map(plainWords);
    this.#nameAt = nameAt;
    this.#figureAt = figureAt;
    this.#otherAt = otherAt;
  }

  /** @returns why the row is no lot; `undefined` where it may be one */
  sort(cells: readonly string[]): NoLot | undefined {
    const texts = cells.map((cell) => cell.trim());
    const filled = texts.flatMap((text, index) => (text === '' ? [] : [index]));
    const isAgain = this.#isHeader(texts, filled);
    if (isAgain) {
      this.#isElsewhere = false;
      return 'headings again';
    }
    if (this.#isElsewhere) return 'another table';
    const first = texts[filled[0] ?? 0] ?? '';
    const figures = this.#figureAt.filter((index) => /\d|[½¼¾⅓⅔]/.test(texts[index] ?? ''));
    const words = plainWords(first.replaceAll('Ø', 'o').replaceAll('Σ', 'sum'));
    if (
      TOTAL.test(words) &&
      (filled[0] === this.#nameAt || (texts[this.#nameAt] ?? '') === '' || filled.length <= 2)
    )
      return 'total';
    const name = texts[this.#nameAt] ?? '';
    if (name === '' && figures.length > 0 && this.#areSums(texts, figures)) return 'total';
    if (filled.length >= 3 && figures.length === 0 && this.#isOtherHeader(texts, filled)) {
      this.#isElsewhere = true;
      return 'another table';
    }
    if (filled.length === 1 || (figures.length === 0 && !this.#saysMore(texts))) {
      if (filled.length === 1 && figures.length === 1 && name === '') return 'note';
      return this.#headingOrNote(first, filled.length);
    }
    figures.forEach((index) => this.#add(index, texts[index]!));
    return undefined;
  }

  /** Takes the meal that a title names, if it is one. */
  readTitle(title: string): void {
    this.#headingOrNote(title, 1);
  }

  #headingOrNote(text: string, filled: number): NoLot {
    const words = plainWords(text);
    const named =
      MEAL_VOCABULARY.meaning(words) ??
      MEAL_VOCABULARY.meaning(words.split(' ')[0]!) ??
      MEAL_VOCABULARY.meaning(words.split(' ').at(-1)!);
    const isShort = words.split(' ').length <= 4 && text.length <= 40 && !/^[*†#]|[=.!]$/.test(text.trim());
    if (!isShort || filled > 1) return 'note';
    this.meals = words.length > 1 ? named : undefined;
    return 'heading of rows';
  }

  #saysMore(texts: readonly string[]): boolean {
    return (
      (this.#otherAt.filter((index) => (texts[index] ?? '') !== '').length >= 2 &&
        (texts[this.#nameAt] ?? '') !== '') ||
      this.#figureAt.filter((index) => (texts[index] ?? '') !== '').length >= 2
    );
  }

  #isHeader(texts: readonly string[], filled: readonly number[]): boolean {
    const named = filled.filter((index) => plainWords(texts[index]!) !== '');
    return (
      named.length >= 2 &&
      named.every(
        (index) =>
          this.#header[index]?.includes(plainWords(texts[index]!)) && plainWords(texts[index]!).length > 0,
      ) &&
      !texts.some(isValue)
    );
  }

  #isOtherHeader(texts: readonly string[], filled: readonly number[]): boolean {
    return (
      !texts.some(isValue) &&
      filled.every((index) => texts[index]!.length < 40) &&
      filled.filter((index) => (headingMeanings(texts[index]!)[0]?.sure ?? 0) > 0.9).length >=
        Math.max(3, filled.length * 0.75)
    );
  }

  #areSums(texts: readonly string[], figures: readonly number[]): boolean {
    return figures.some((index) => {
      const value = plainNumber(texts[index]!);
      const known = this.#sums.get(index);
      return (
        value !== undefined &&
        known !== undefined &&
        known.since > 1 &&
        Math.abs(known.sum - value) <= 0.011 * Math.max(1, Math.abs(value))
      );
    });
  }

  #add(index: number, text: string): void {
    const value = plainNumber(text);
    if (value === undefined) return;
    const { sum, since } = this.#sums.get(index) ?? { sum: 0, since: 0 };
    this.#sums.set(index, { sum: sum + value, since: since + 1 });
  }
}

const plainNumber = (text: string): number | undefined => {
  const match = /^\D{0,3}(\d+(?:[.,]\d+)?)\D{0,8}$/.exec(text);
  return match ? Number(match[1]!.replace(',', '.')) : undefined;
};
