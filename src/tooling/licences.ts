/* `npm run licences`: writes docs/licences.md from package-lock.json. With --check it only tells whether that is current. Both refuse a licence that is not on the list. */
import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import * as prettier from 'prettier';
import { ROOT } from './run.ts';

/** SPDX names of licences under which a package may be used. MPL-2.0 asks for changed files of the package itself, of which there are none. */
const ALLOWED: readonly string[] = [
  '0BSD',
  'Apache-2.0',
  'BlueOak-1.0.0',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'ISC',
  'MIT',
  'MPL-2.0',
  'Zlib',
];
/** What packages say elsewhere than in that field: jstat in its file LICENSE. */
const SAID_ELSEWHERE: Readonly<Record<string, string>> = { jstat: 'MIT' };

export type Package = {
  readonly name: string;
  readonly version: string;
  readonly licence: string;
  /** Only for building and testing. */
  readonly isDev: boolean;
};
type Lock = {
  readonly packages: Readonly<
    Record<string, { readonly version: string; readonly license?: string; readonly dev?: boolean }>
  >;
};

/** @returns the packages that a lock file names, each version once, by name */
export function packagesOf(lock: Lock): Package[] {
  const found = new Map<string, Package>();
  for (const [place, { version, license, dev = false }] of Object.entries(lock.packages)) {
    const name = place.split('node_modules/').at(-1) ?? '';
    if (name === '') continue;
    const key = `${name} ${version}`;
    const isDev = dev && (found.get(key)?.isDev ?? true);
    found.set(key, { name, version, licence: license ?? SAID_ELSEWHERE[name] ?? 'none stated', isDev });
  }
  return [...found.values()].sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0));
}

/** @returns whether an SPDX expression can be met by allowed licences alone */
export function isAllowed(expression: string): boolean {
  const bare = expression.replaceAll(/[()]/g, '');
  return bare.split(' OR ').some((way) => way.split(' AND ').every((one) => ALLOWED.includes(one)));
}

function written(packages: readonly Package[]): Promise<string> {
  const list = (isDev: boolean) =>
    packages
      .filter((one) => one.isDev === isDev)
      .map(({ name, version, licence }) => `| ${name} | ${version} | ${licence} |`)
      .join('\n');
  const table = (isDev: boolean) => `| package | version | licence |\n| --- | --- | --- |\n${list(isDev)}\n`;
  const text = `# Licences\n\nOf the packages that Ridgelarder is made with, as \`package-lock.json\` has them. Written by \`npm run licences\`, which refuses any but ${ALLOWED.join(', ')}.\n\n## When it runs\n\n${table(false)}\n## For building and testing\n\n${table(true)}`;
  return prettier.format(text, { parser: 'markdown', printWidth: 110 });
}

if (import.meta.main) {
  const packages = packagesOf(JSON.parse(readFileSync(path.join(ROOT, 'package-lock.json'), 'utf8')) as Lock);
  const refused = packages.filter(({ licence }) => !isAllowed(licence));
  for (const { name, version, licence } of refused)
    console.error(
      `${name} ${version} is under ${licence}, which is not on the list in src/tooling/licences.ts.`,
    );
  const file = path.join(ROOT, 'docs/licences.md');
  const text = await written(packages);
  const isCurrent = readFileSync(file, { encoding: 'utf8', flag: 'a+' }) === text;
  if (process.argv.includes('--check')) {
    if (!isCurrent)
      console.error('docs/licences.md is not what package-lock.json says. Run "npm run licences".');
    process.exitCode = isCurrent && refused.length === 0 ? 0 : 1;
  } else {
    writeFileSync(file, text);
    process.exitCode = refused.length === 0 ? 0 : 1;
  }
}
