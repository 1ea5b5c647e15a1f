import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { findTexts } from './find-texts.ts';

const root = mkdtempSync(join(tmpdir(), 'texts-'));
afterAll(() => rmSync(root, { recursive: true }));

function found(file: string, code: string) {
  writeFileSync(join(root, file), code);
  const { said, loose } = findTexts(root, file);
  return {
    said: said.map(({ source, values }) => [source, values]),
    loose: loose.map(({ text, inMarkup }) => [text, inMarkup]),
  };
}

it('finds what a script says, with the names of its values', () => {
  const code = `
    import { say, text } from './say.ts';
    export const WORDS = { hot: text('hot water') };
    export const told = (day: number) => say('Day {day}', { day });
    export const more = (values: Values) => say('{a} and {b}', { ...values });
    export const why = () => { throw new Error('for programmers only'); };`;
  expect(found('a.ts', code)).toEqual({
    said: [
      ['hot water', []],
      ['Day {day}', ['day']],
      ['{a} and {b}', undefined],
    ],
    loose: [],
  });
});

it('finds words of a script that are not said', () => {
  const code = `
    const text = 'no way'.trim();
    export const a = 'No pouch left.';
    export const b = (n: number) => \`There are \${n} left\`;
    export const c = text.includes('x') ? 'code' : 'other-code';`;
  expect(found('b.ts', code)).toEqual({
    said: [],
    loose: [
      ['no way', false],
      ['No pouch left.', false],
      ['There are', false],
      ['left', false],
    ],
  });
});

it('finds words of the markup, read aloud or seen, but no units, codes and styles', () => {
  const code = `<script lang="ts">let { label }: { label: string } = $props();</script>
    <h1 class="big name">Two words</h1>
    <p aria-label="Read aloud" title={say('Said')}>{say('Seen {label}', { label })} 12 kcal</p>
    <Field name="party" label="Eaters" />
    <style>.big { color: red; }</style>`;
  expect(found('c.svelte', code)).toEqual({
    said: [
      ['Said', []],
      ['Seen {label}', ['label']],
    ],
    loose: [
      ['Two words', true],
      ['Read aloud', true],
      ['Eaters', true],
    ],
  });
});
