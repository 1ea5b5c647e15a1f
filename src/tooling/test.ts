/*
 * `npm test`: every check there is, going on after one that fails. `npm test -- types lint` runs some.
 * The last line counts: each test case of vitest, and each other check as one.
 */
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import path from 'node:path';
import { ensureBuilt } from './build.ts';
import { ensureChromium } from './chromium.ts';
import { ensurePostgres } from './postgres.ts';
import { ROOT, run, runBeside } from './run.ts';
import { checkSize } from './size.ts';

type Count = { readonly passed: number; readonly failed: number };
type VitestReport = {
  readonly numPassedTests: number;
  readonly numFailedTests: number;
  readonly testResults: readonly {
    readonly status: string;
    readonly assertionResults: readonly { readonly status: string }[];
  }[];
};

const asOne = (ok: boolean): Count => ({ passed: ok ? 1 : 0, failed: ok ? 0 : 1 });

/** Counts the test cases; a file that could not be loaded, or a failure outside any test, counts as one failed. */
function vitest(project: string): Count {
  const reportFile = path.join(ROOT, 'test-results', `${project}.json`);
  rmSync(reportFile, { force: true });
  mkdirSync(path.dirname(reportFile), { recursive: true });
  const ok = run(
    `vitest run --project ${project} --reporter=default --reporter=json --outputFile.json="${reportFile}"`,
  );
  if (!existsSync(reportFile)) return asOne(false);
  const report: VitestReport = JSON.parse(readFileSync(reportFile, 'utf8'));
  const brokenFiles = report.testResults.filter(
    (file) => file.status === 'failed' && !file.assertionResults.some(({ status }) => status === 'failed'),
  );
  const failed = report.numFailedTests + brokenFiles.length;
  return { passed: report.numPassedTests, failed: ok ? failed : Math.max(failed, 1) };
}

function browserTests(): Count {
  if (ensureChromium() === undefined) {
    console.error('There is no Chromium, and none could be installed. Install one, or name it in CHROMIUM.');
    return asOne(false);
  }
  return vitest('browser');
}

function unitTests(): Count {
  if (!ensurePostgres())
    console.error(
      'There is no PostgreSQL, and none could be installed, so the tests on it are skipped. Install one, or name the folder of its programs in POSTGRES_BIN.',
    );
  return vitest('unit');
}

/** What only reads the sources, and with one processor: two of these run at a time. */
const READING: Readonly<Record<string, string>> = {
  types: 'svelte-check --fail-on-warnings --output human && tsc --project src/service-worker',
  lint: 'eslint . --max-warnings 0',
  format: 'prettier --check --log-level warn .',
  texts: 'node src/tooling/texts.ts --brief',
  imports: 'node src/tooling/import-rules.ts',
  schema: 'node src/tooling/schema.ts --check',
  licences: 'node src/tooling/licences.ts --check',
};
const CHECKS: Readonly<Record<string, () => Count>> = {
  unit: unitTests,
  build: () => asOne(ensureBuilt()),
  size: () => asOne(checkSize()),
  fuzz: () => asOne(ensureBuilt() && run('node tests/fuzz/fuzz.ts --cases 2000 --seed 1')),
  browser: browserTests,
};

const chosen = process.argv.slice(2);
const names = [...Object.keys(READING), ...Object.keys(CHECKS)];
const unknown = chosen.filter((name) => !names.includes(name));
if (unknown.length > 0) {
  console.error(`There is no check named ${unknown.join(', ')}; there are: ${names.join(', ')}.`);
  process.exit(2);
}

let passed = 0;
let failed = 0;
const failedChecks: string[] = [];
const isChosen = (name: string) => chosen.length === 0 || chosen.includes(name);
const title = (name: string) => `\n── ${name}`;
function add(name: string, count: Count): void {
  passed += count.passed;
  failed += count.failed;
  if (count.failed > 0) failedChecks.push(`${name} (${count.failed})`);
}

const reading = Object.entries(READING).filter(([name]) => isChosen(name));
// What types and rules are read with.
const isSynced = reading.length === 0 || run('svelte-kit sync');
const waiting = reading.values();
async function readOneByOne(): Promise<void> {
  for (const [name, commandLine] of waiting) {
    const { ok, output } = await runBeside(commandLine);
    console.log(`${title(name)}\n${output}`.trimEnd());
    add(name, asOne(ok && isSynced));
  }
}
await Promise.all([readOneByOne(), readOneByOne()]);

for (const [name, check] of Object.entries(CHECKS)) {
  if (!isChosen(name)) continue;
  console.log(title(name));
  add(name, check());
}
console.log(failedChecks.length > 0 ? `\nFailed: ${failedChecks.join(', ')}` : '\nAll is well.');
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 ? 1 : 0;
