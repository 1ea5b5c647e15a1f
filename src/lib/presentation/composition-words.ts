import type { CompositionDoubt } from '../planning/model/composition-doubts.ts';
import { shownFixed } from './show.ts';
import { say } from '../texts/say.ts';

/** @returns what looks odd in a row of a table of foods, after the food's name. */
export function compositionDoubtText(doubt: CompositionDoubt): string {
  switch (doubt.code) {
    case 'parts-over-100':
      return say('its parts come to {parts} g in 100 g; check water, protein, fat, carbohydrate and fibre', {
        parts: shownFixed(doubt.partsG, 1),
      });
    case 'energy-unlike-parts':
      return say(
        'it says {stated} kcal per 100 g, but its nutrients give {calculated} kcal by the EU factors; check kJ or kcal',
        { stated: shownFixed(doubt.statedKcal, 0), calculated: shownFixed(doubt.byPartsKcal, 0) },
      );
  }
}
