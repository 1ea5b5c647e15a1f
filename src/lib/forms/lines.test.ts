import { expect, it } from 'vitest';
import { atLines, keptLines, linesOf, linesWithNew } from './lines.ts';
import { FormReader, type Entered } from './read-form.ts';

const STORED: Entered = {
  'staples[10].name': [''],
  'staples[2].name': [''],
  'fuelContainers[3].label': [''],
};

it('lists the lines that were sent, in their order', () => {
  expect(linesOf(STORED, 'staples')).toEqual([2, 10]);
});

it('shows what is stored, one empty line, and what was typed beyond it', () => {
  const stored: Entered = { 'a[0].name': ['x'], 'a[1].name': ['y'] };
  expect(linesWithNew(stored, undefined, 'a')).toEqual([0, 1, 2]);
  expect(linesWithNew(stored, { 'a[2].name': ['z'], 'a[4].name': ['w'] }, 'a')).toEqual([0, 1, 2, 4]);
  expect(linesWithNew({}, undefined, 'a')).toEqual([0]);
});

it('keeps lines that say something and are not to be removed', () => {
  const form = new FormData();
  const fields = {
    'a[0].name': 'x',
    'a[0].remove': 'on',
    'a[1].name': 'y',
    'a[2].name': ' ',
    'a[2].kind': 'chosen',
    'a[3].weight': '0',
    'b[5].name': 'of another list',
  };
  for (const [name, value] of Object.entries(fields)) form.append(name, value);
  const read = new FormReader(form, 'metric');
  expect(keptLines(read, 'a', ['kind'])).toEqual([1, 3]);
  expect(keptLines(read, 'a', [])).toEqual([1, 2, 3]);
});

it('leads a problem from its place in the list back to its line in the form', () => {
  const at = (field: string) => atLines([{ field, message: 'm' }], { a: [1, 3] })[0]?.field;
  expect([at('a[1].name'), at('a[0]'), at('b[1].name'), at('a'), at('share')]).toEqual([
    'a[3].name',
    'a[1]',
    'b[1].name',
    'a',
    'share',
  ]);
});
