import type { Label } from '../presentation/make-label.ts';
import { say } from '../texts/say.ts';
import type { SizeClass } from './papers.ts';

export type LabelLine = {
  readonly kind: 'name' | 'strong' | 'plain';
  readonly text: string;
  /** May be left out where there is no room. */
  readonly optional?: true;
};

/**
 * What a label of a size says, from the top: the one place that decides it. Of every size are the code, the best-before, what it
 * contains, the oxygen absorber, how much water and time it takes, and that nobody measured how dry it is.
 */
export function labelLines(label: Label, size: SizeClass): LabelLine[] {
  const { name, code, servings, isShared, water, steep, energy, protein, netWeight, diets } = label;
  const pour = water
    ? say('Pour in {amount} {water}', { amount: water.pouch, water: water.kind })
    : say('Needs no water');
  const ofProtein = protein === undefined ? [] : [say('{amount} protein', { amount: protein })];
  const line = (kind: LabelLine['kind'], ...parts: readonly string[]): LabelLine => ({
    kind,
    text: unbrokenAmounts(`${parts.join(', ')}.`),
  });
  const may = (...parts: readonly string[]): LabelLine => ({ ...line('plain', ...parts), optional: true });

  const lines: LabelLine[] = [
    { kind: 'name', text: name },
    { kind: 'strong', text: say('{code} · best before {date}', { code, date: label.bestBefore }) },
    { kind: 'strong', text: label.absorber },
    line('plain', ...(label.bowl === undefined ? [] : [label.bowl]), pour, ...(steep ? [steep] : [])),
    { kind: 'strong', text: label.allergens },
    ...(label.unweighed === undefined ? [] : [{ kind: 'strong', text: label.unweighed } as const]),
  ];
  if (size === 'dense') return [...lines, may(servings, energy.pouch)];
  return [
    ...lines,
    may(servings, energy.pouch, ...(isShared ? [] : ofProtein)),
    ...(isShared
      ? [
          may(
            water
              ? say('One serving: {amount} water', { amount: water.serving })
              : say('One serving: {energy}', { energy: energy.serving }),
            ...(water ? [energy.serving] : []),
            ...ofProtein,
          ),
        ]
      : []),
    may(
      `${[say('{amount} of dry food', { amount: netWeight }), ...diets].join(', ')}. ${say('Sealed {date}', { date: label.sealedOn })}`,
    ),
    { kind: 'plain', text: label.caution, optional: true },
  ];
}

/** A number stays on one row with its unit. */
const unbrokenAmounts = (text: string): string => text.replace(/(\d) (?=\p{L})/gu, '$1\u00a0');
