import { expect, test } from 'vitest';
import { text } from '$lib/texts/say.ts';
import { enteredInWords, foldedInWords } from './folded.ts';

test('a fold says what is entered first, then what holds otherwise', () => {
  expect(
    foldedInWords([
      { label: 'Base weight', entered: '', usual: '9 kg' },
      { label: 'Carry limit', entered: '14 kg', usual: '18 kg' },
      { label: 'Tastes', entered: '' },
    ]),
  ).toBe('Carry limit 14 kg · default: Base weight 9 kg');
});

test('a fold with nothing to say says nothing', () => {
  expect(foldedInWords([{ label: 'Tastes', entered: '' }])).toBe('');
});

test('a choice is said by its words, a figure with its unit, and nothing stays nothing', () => {
  expect(enteredInWords('dry', { words: { dry: text('dry camp') } })).toBe('dry camp');
  expect(enteredInWords('14', { unit: 'kg' })).toBe('14 kg');
  expect(enteredInWords('', { unit: 'kg' })).toBe('');
});
