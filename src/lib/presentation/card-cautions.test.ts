import { expect, it } from 'vitest';
import { cardCautions } from './card-cautions.ts';

it('the card carries the cautions of CDC and of every stove', () => {
  const cautions = cardCautions();
  expect(cautions.some((text) => text.includes('1 minute') && text.includes('3 minutes above 2000 m'))).toBe(
    true,
  );
  for (const word of ['absorber', 'carbon monoxide', 'Allergens', 'Local rules'])
    expect(cautions.some((text) => text.includes(word))).toBe(true);
});
