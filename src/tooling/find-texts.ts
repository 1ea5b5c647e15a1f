import { readFileSync } from 'node:fs';
import { glob } from 'node:fs/promises';
import { join } from 'node:path';
import { parse } from 'svelte/compiler';

/** A text that a source says: the key of its translation. */
export type SaidText = {
  readonly source: string;
  readonly at: string;
  /** The names of the values handed in; `undefined` where they are not written out there. */
  readonly values: readonly string[] | undefined;
};

/** A text that stands in a source and is not said, so that no translation reaches it. */
export type LooseText = { readonly text: string; readonly at: string; readonly inMarkup: boolean };

export type FoundTexts = { readonly said: readonly SaidText[]; readonly loose: readonly LooseText[] };

/** Programs that speak to a terminal, and invented or gathered data, are English. */
const NOT_TRANSLATED =
  /\.test\.ts$|\.d\.ts$|^src\/tooling\/(?!card-text|plan-text)|^src\/lib\/foods\/(?:kitchen-names|rule-of-thumb-foods|food-nature|food-words|find-food|sr26)|test-data\.ts$/;
const SAYING = ['say', 'sayRich', 'text'];
const READ_ALOUD = ['aria-label', 'title', 'placeholder', 'alt', 'label', 'caption'];
/** The same in every language of the program. */
const UNTRANSLATABLE =
  /^(?:Ridgelarder|g|kg|mg|ml|l|dl|fl oz|oz|qt|lb|cm|mm|m|km|mi|ft|in|h|min|s|kcal|kJ|kWh|W|CSV|GPX|JSON|PDF|A4|A5|QR|HiGHS|LP|pH|RH|kPa|hPa|Pa|PET|[^\p{L}]+)$/u;

type Node = { readonly type: string; readonly start: number; readonly [key: string]: unknown };

/** @returns the sources that speak to people who use the program. @param root the project's folder */
export async function speakingSources(root: string): Promise<string[]> {
  const files: string[] = [];
  for await (const file of glob('src/**/*.{ts,svelte}', { cwd: root }))
    if (!NOT_TRANSLATED.test(file)) files.push(file);
  return files.sort();
}

/**
 * @param file path below `root`
 * @returns what it says, and what else in it looks like words for people: all texts of the markup, and strings of the script that hold two words
 */
export function findTexts(root: string, file: string): FoundTexts {
  const code = readFileSync(join(root, file), 'utf8');
  const isSvelte = file.endsWith('.svelte');
  const shift = isSvelte ? 0 : SCRIPT.length;
  const tree = parse(isSvelte ? code : `${SCRIPT}${code.replaceAll('</script', '<\\/script')}</script>`, {
    modern: true,
  });
  const said: SaidText[] = [];
  const loose: LooseText[] = [];
  const at = (node: Node) => `${file}:${code.slice(0, node.start - shift).split('\n').length}`;

  const addLoose = (node: Node, words: string, inMarkup: boolean) => {
    const shown = words.replace(/\s+/g, ' ').trim();
    const bare = shown.replace(/&\w+;|Ridgelarder/g, ' ').replace(/^[^\p{L}]+|[^\p{L}]+$/gu, '');
    if (/\p{L}{2,}/u.test(bare) && !UNTRANSLATABLE.test(bare))
      loose.push({ text: shown, at: at(node), inMarkup });
  };

  const visit = (node: Node, parent: Node | undefined, field: string): void => {
    if (PASSED_OVER.has(node.type)) return;
    if (node.type === 'CallExpression' && SAYING.includes(nameOf(node['callee']))) {
      const [first, values] = node['arguments'] as Node[];
      const source = first && literal(first);
      if (source !== undefined) said.push({ source, at: at(node), values: namesOf(values) });
      if (values) visit(values, node, 'arguments');
      if (first && source === undefined) visit(first, node, 'arguments');
      return;
    }
    if (node.type === 'NewExpression' && /^(?:Range|Type|Syntax)?Error$/.test(nameOf(node['callee']))) return;
    if (node.type === 'TaggedTemplateExpression' && isSql(node['tag'])) return;
    if (node.type === 'Attribute') {
      const words = Array.isArray(node['value']) ? (node['value'] as Node[]) : [];
      const read = READ_ALOUD.includes(String(node['name'])) || parent?.type === 'Component';
      for (const part of words)
        if (part.type !== 'Text') visit(part, node, 'value');
        else if (read && /\s|^\p{Lu}/u.test(String(part['data']))) addLoose(part, String(part['data']), true);
      if (!Array.isArray(node['value']) && isNode(node['value'])) visit(node['value'], node, 'value');
      return;
    }
    if (node.type === 'Text' && field === 'nodes') addLoose(node, String(node['data']), true);
    if (node.type === 'Literal' && typeof node['value'] === 'string') {
      const isKey = parent?.type === 'Property' && field === 'key';
      if (!isKey && /\p{L} \p{L}/u.test(node['value'])) addLoose(node, node['value'], false);
    }
    if (node.type === 'TemplateElement') {
      const raw = String((node['value'] as { raw: string }).raw);
      if (/\p{L}{2,}.* |\s\p{L}{2,}/u.test(raw)) addLoose(node, raw, false);
    }
    for (const [key, value] of Object.entries(node)) {
      if (key === 'parent' || key === 'metadata' || key === 'css' || key === 'comments') continue;
      for (const child of Array.isArray(value) ? value : [value]) if (isNode(child)) visit(child, node, key);
    }
  };
  for (const part of [tree.module, tree.instance, tree.fragment])
    if (isNode(part)) visit(part, undefined, 'nodes');
  return { said, loose };
}

const SCRIPT = '<script lang="ts">';
const PASSED_OVER = new Set([
  'ImportDeclaration',
  'ExportAllDeclaration',
  'TSLiteralType',
  'TSTemplateLiteralType',
  'TSTypeAliasDeclaration',
  'TSInterfaceDeclaration',
  'StyleSheet',
  'Comment',
]);

function isNode(value: unknown): value is Node {
  return typeof value === 'object' && value !== null && typeof (value as Node).type === 'string';
}

function nameOf(node: unknown): string {
  return isNode(node) && node.type === 'Identifier' ? String(node['name']) : '';
}

/** `sql` and `sql.raw` of kysely. */
function isSql(tag: unknown): boolean {
  return isNode(tag) && nameOf(tag.type === 'MemberExpression' ? tag['object'] : tag) === 'sql';
}

function literal(node: Node): string | undefined {
  if (node.type === 'Literal' && typeof node['value'] === 'string') return node['value'];
  if (node.type === 'TSAsExpression') return literal(node['expression'] as Node);
  if (node.type !== 'TemplateLiteral' || (node['expressions'] as Node[]).length > 0) return undefined;
  return (node['quasis'] as { value: { cooked: string } }[])[0]?.value.cooked;
}

function namesOf(values: Node | undefined): string[] | undefined {
  if (!values) return [];
  if (values.type !== 'ObjectExpression') return undefined;
  const properties = values['properties'] as Node[];
  if (properties.some(({ type }) => type !== 'Property')) return undefined;
  return properties.map(({ key }) => String((key as Node)['name'] ?? (key as Node)['value']));
}
