/*
 * ICU MessageFormat as far as the texts use it: values, numbers, plurals, selects and tags. A whole parser of the format is a seventh of what a page loads, most of it
 * tables of dates and skeletons that no text names; a test holds this one to a published implementation over all texts of all languages.
 */

export type Values = Readonly<Record<string, string | number>>;

/** Words of a text, and the tag that marks them, if any. */
export type Part = { readonly words: string; readonly tag?: string };

/** How a language counts and writes numbers. */
export type Conventions = {
  readonly writeNumber: (value: number) => string;
  readonly pluralOf: (value: number, type: Intl.PluralRuleType) => string;
};

type Choice = Readonly<Record<string, Message>>;
type Node =
  | string
  | { readonly kind: 'value'; readonly name: string }
  | { readonly kind: 'number'; readonly name: string }
  | { readonly kind: 'select' | 'plural' | 'selectordinal'; readonly name: string; readonly of: Choice }
  | { readonly kind: 'tag'; readonly name: string; readonly within: Message }
  | typeof COUNT;
export type Message = readonly Node[];

/** The number sign in a plural. */
const COUNT = { kind: 'count' } as const;
const ARGUMENT = /\{\s*(\w+)\s*(\}|,\s*(\w+)\s*(?:\}|,))/y;
const OPTION = /\s*(=?[\w-]+)\s*\{/y;
const CLOSING = /\s*\}/y;
const TAG = /<(\w+)>/y;

/**
 * Reads a pattern.
 *
 * @param tags whether `<name>…</name>` marks, or is words
 * @throws SyntaxError where it is no pattern that the texts may use
 * @see https://unicode-org.github.io/icu/userguide/format_parse/messages/
 */
export function parseMessage(pattern: string, tags: boolean): Message {
  let at = 0;
  const fault = () => new SyntaxError(`no pattern from character ${at} on: ${pattern}`);
  const take = (expected: RegExp): RegExpExecArray | undefined => {
    expected.lastIndex = at;
    const found = expected.exec(pattern) ?? undefined;
    if (found) at = expected.lastIndex;
    return found;
  };

  function message(ends: string | undefined, counts: boolean): Message {
    const nodes: Node[] = [];
    let words = '';
    const add = (node: Node) => {
      if (words) nodes.push(words);
      words = '';
      nodes.push(node);
    };
    for (; at < pattern.length && !(ends && pattern.startsWith(ends, at));) {
      const sign = pattern[at];
      if (sign === "'") words += apostrophe(counts);
      else if (sign === '{') add(argument());
      else if (sign === '#' && counts) add((at++, COUNT));
      else if (sign === '<' && tags && /[\w/]/.test(pattern[at + 1] ?? '')) add(tag(counts));
      else words += pattern[at++];
    }
    if (ends && !pattern.startsWith(ends, at)) throw fault();
    at += ends?.length ?? 0;
    return words ? [...nodes, words] : nodes;
  }

  /** An apostrophe quotes only what would else be a sign; two are one. */
  function apostrophe(counts: boolean): string {
    const next = pattern[++at] ?? '';
    if (next === "'") return (at++, next);
    if (next === '' || !(counts ? '{}<>#' : '{}<>').includes(next)) return "'";
    let quoted = '';
    for (; at < pattern.length; at++) {
      if (pattern[at] !== "'") quoted += pattern[at];
      else if (pattern[at + 1] === "'") quoted += pattern[at++];
      else return (at++, quoted);
    }
    return quoted;
  }

  function argument(): Node {
    const [, name, rest, kind] = take(ARGUMENT) ?? [];
    if (!name) throw fault();
    if (rest === '}') return { kind: 'value', name };
    if (kind === 'number' && rest?.endsWith('}')) return { kind, name };
    if ((kind !== 'plural' && kind !== 'select' && kind !== 'selectordinal') || rest?.endsWith('}'))
      throw fault();
    const of: Record<string, Message> = {};
    for (let option = take(OPTION); option; option = take(OPTION))
      of[option[1] ?? ''] = message('}', kind !== 'select');
    if (!Object.hasOwn(of, 'other') || !take(CLOSING)) throw fault();
    return { kind, name, of };
  }

  function tag(counts: boolean): Node {
    const name = take(TAG)?.[1];
    if (!name) throw fault();
    return { kind: 'tag', name, within: message(`</${name}>`, counts) };
  }

  return message(undefined, false);
}

/**
 * Puts values into a text.
 *
 * @returns its words, parted where a tag begins or ends
 * @throws RangeError where a value is missing
 */
export function formatMessage(message: Message, values: Values, conventions: Conventions): readonly Part[] {
  const parts: Part[] = [];
  const say = (words: string) => {
    const last = parts.at(-1);
    if (!words) return;
    if (last && last.tag === undefined) parts[parts.length - 1] = { words: last.words + words };
    else parts.push({ words });
  };
  const valueOf = (name: string): string | number => {
    const value = Object.hasOwn(values, name) ? values[name] : undefined;
    if (value === undefined) throw new RangeError(`the value of ${name} is missing`);
    return value;
  };
  function walk(nodes: Message, count: number): void {
    for (const node of nodes) {
      if (typeof node === 'string') say(node);
      else if (node.kind === 'count') say(conventions.writeNumber(count));
      else if (node.kind === 'tag')
        parts.push({
          words: formatMessage(node.within, { ...values, [COUNTED]: count }, conventions)
            .map(({ words }) => words)
            .join(''),
          tag: node.name,
        });
      else {
        const value = valueOf(node.name);
        if (node.kind === 'value') say(String(value));
        else if (node.kind === 'number') say(conventions.writeNumber(Number(value)));
        else walk(chosen(node, value, conventions), Number(value));
      }
    }
  }
  walk(message, Number(values[COUNTED]));
  return parts;
}

/** Hands the number of a plural on into a tag within it. */
const COUNTED = '#';

function chosen(
  { kind, of }: Extract<Node, { of: Choice }>,
  value: string | number,
  { pluralOf }: Conventions,
): Message {
  const keys =
    kind === 'select'
      ? [String(value)]
      : [`=${value}`, pluralOf(Number(value), kind === 'plural' ? 'cardinal' : 'ordinal')];
  const key = keys.find((one) => Object.hasOwn(of, one)) ?? 'other';
  return of[key] ?? [];
}
