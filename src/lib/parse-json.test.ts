import { expect, test } from 'vitest';
import { parseJson } from './parse-json.ts';

test('reads what is JSON', () => {
  expect(parseJson(' {"days": [1, 2.5, null]} ')).toEqual({ value: { days: [1, 2.5, null] } });
});

test.each([
  ['nothing', '', 1, 1],
  ['a comma too many', '{\n  "a": 1,\n}', 3, 1],
  ['a missing colon', '{"a" 1}', 1, 6],
  ['a word', '{\n  "a": yes\n}', 2, 8],
  ['single quotes', "{'a': 1}", 1, 2],
  ['an open text', '{"a": "b}', 1, 10],
  ['two values', '{}\n{}', 2, 1],
])('says where the fault is: %s', (_, text, line, column) => {
  const result = parseJson(text);
  expect(result).toHaveProperty('fault');
  expect('fault' in result && result.fault).toMatch(new RegExp(`\\(line ${line} column ${column}\\)$`));
});

test('the message is a single line', () => {
  const result = parseJson('x\n\ty\u0000');
  expect('fault' in result && result.fault).not.toMatch(/[\n\t\u0000]/);
});
