import { lexer, type MarkedToken, type Token, type Tokens } from 'marked';

/** Words in a line. */
export type Span =
  | { readonly kind: 'text' | 'code'; readonly text: string }
  | { readonly kind: 'strong' | 'em'; readonly spans: readonly Span[] }
  | { readonly kind: 'link'; readonly href: string; readonly spans: readonly Span[] };

export type Cell = { readonly spans: readonly Span[]; readonly isNumber: boolean };

export type Block =
  | {
      readonly kind: 'heading';
      readonly depth: number;
      readonly id: string;
      /** Its words without code names in brackets. */
      readonly title: string;
      readonly spans: readonly Span[];
    }
  | { readonly kind: 'paragraph'; readonly spans: readonly Span[] }
  | { readonly kind: 'list'; readonly isOrdered: boolean; readonly items: readonly (readonly Block[])[] }
  | {
      readonly kind: 'table';
      /** What its columns are headed, for those who hear the page. */
      readonly name: string;
      readonly head: readonly Cell[];
      readonly rows: readonly (readonly Cell[])[];
    }
  | { readonly kind: 'code'; readonly text: string };

/** What a page can link to. Of a file beside the document only the name is given. */
const OPENS = /^(?:https:|#)/;

/**
 * Reads a document of our own into blocks that pages show by components, so that no text of it is ever taken for HTML. Headings have an id
 * made of their words.
 *
 * @throws where the document holds what the pages cannot show, such as HTML or a picture
 */
export function readMarkdown(markdown: string): readonly Block[] {
  return blocksOf(lexer(markdown), new Set());
}

/** @returns a translation of a document with the ids of the original's headings, so that links to them hold in every language */
export const withIdsOf = (original: readonly Block[], translation: readonly Block[]): readonly Block[] =>
  translation.map((block, place) => {
    const same = original[place];
    return block.kind === 'heading' && same?.kind === 'heading' ? { ...block, id: same.id } : block;
  });

function blocksOf(tokens: readonly Token[], taken: Set<string>): readonly Block[] {
  return (tokens as readonly MarkedToken[]).flatMap((token): Block[] => {
    switch (token.type) {
      case 'space':
        return [];
      case 'heading':
        return [headingOf(token, taken)];
      case 'paragraph':
      case 'text':
        return [{ kind: 'paragraph', spans: spansOf(token.tokens ?? []) }];
      case 'list':
        return [
          {
            kind: 'list',
            isOrdered: token.ordered,
            items: token.items.map((item) => blocksOf(item.tokens, taken)),
          },
        ];
      case 'table': {
        const cells = (row: typeof token.header): Cell[] =>
          row.map((cell, column) => ({
            spans: spansOf(cell.tokens),
            isNumber: token.align[column] === 'right',
          }));
        const name = token.header.map(({ text }) => text).join(', ');
        return [{ kind: 'table', name, head: cells(token.header), rows: token.rows.map(cells) }];
      }
      case 'code':
        return [{ kind: 'code', text: token.text }];
      default:
        throw new Error(`"${token.type}" cannot be shown: ${token.raw}`);
    }
  });
}

function spansOf(tokens: readonly Token[]): readonly Span[] {
  return (tokens as readonly MarkedToken[]).flatMap((token): readonly Span[] => {
    switch (token.type) {
      case 'text':
      case 'escape':
        return [{ kind: 'text', text: token.text }];
      case 'codespan':
        return [{ kind: 'code', text: token.text }];
      case 'strong':
      case 'em':
        return [{ kind: token.type, spans: spansOf(token.tokens) }];
      case 'link':
        return OPENS.test(token.href)
          ? [{ kind: 'link', href: token.href, spans: spansOf(token.tokens) }]
          : [
              ...spansOf(token.tokens),
              { kind: 'text', text: ' (' },
              { kind: 'code', text: token.href },
              { kind: 'text', text: ')' },
            ];
      default:
        throw new Error(`"${token.type}" cannot be shown: ${token.raw}`);
    }
  });
}

function headingOf({ depth, text, tokens }: Tokens.Heading, taken: Set<string>): Block {
  const title = text.replaceAll(/\([^()]*\)/g, '').trim();
  const words = title.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? ['part'];
  let id = words.join('-');
  for (let count = 2; taken.has(id); count++) id = `${words.join('-')}-${count}`;
  taken.add(id);
  return { kind: 'heading', depth, id, title, spans: spansOf(tokens) };
}
