import { sentence } from '$lib/forms/fields.ts';
import type { Label } from '$lib/planning/label/make-label.ts';
import type { SizeClass } from './papers.ts';

export type LabelLine = {
  readonly kind: 'name' | 'strong' | 'plain';
  readonly text: string;
  /** May be left out where there is no room. */
  readonly optional?: true;
};

/**
 * What a label of a size says, from the top: the one place that decides it. Of every size are the code, the best-before, what it
 * contains, the oxygen absorber, and how much water and time it takes.
 */
export function labelLines(label: Label, size: SizeClass): LabelLine[] {
  const { name, code, servings, water, steep, energy, protein, netWeight, diets } = label;
  const isShared = servings !== '1 serving';
  const pour = water ? `Pour in ${water.pouch} ${water.kind}` : 'Needs no water';
  const must = (kind: LabelLine['kind'], text: string): LabelLine => ({ kind, text });
  const may = (text: string): LabelLine => ({ kind: 'plain', text, optional: true });

  const lines = [
    must('name', name),
    must('strong', `${code} · best before ${label.bestBefore}`),
    must('strong', label.absorber),
    must('plain', `${[pour, steep].filter(Boolean).join(', ')}.`),
    must('strong', label.allergens),
    may(`${servings}, ${energy.pouch}.`),
  ];
  if (size === 'dense') return lines;

  const ofOne = [
    water && isShared ? `${water.serving} water` : '',
    isShared ? energy.serving : '',
    protein ? `${protein} protein` : '',
  ].filter(Boolean);
  return [
    ...lines,
    ...(ofOne.length > 0 ? [may(`One serving: ${ofOne.join(', ')}.`)] : []),
    may(sentence([`${netWeight} of dry food`, ...diets].join(', '))),
    may(`Sealed ${label.sealedOn}.`),
    may(label.caution),
  ];
}
