/*
 * `npm test`: every check there is, one after the other, going on after one that fails. `npm test -- types lint` runs some.
 * The last line counts: each test case of vitest, and each other check as one.
 */
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import path from 'node:path';
import { ensureBuilt } from './build.ts';
import { ensureChromium } from './chromium.ts';
import { ensurePostgres } from './postgres.ts';
import { ROOT, run } from './run.ts';
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

const CHECKS: Readonly<Record<string, () => Count>> = {
  types: () =>
    asOne(
      run('svelte-kit sync') &&
        run('svelte-check --fail-on-warnings --output human') &&
        run('tsc --project src/service-worker'),
    ),
  lint: () => asOne(run('eslint . --max-warnings 0')),
  format: () => asOne(run('prettier --check --log-level warn .')),
  schema: () => asOne(run('node src/tooling/schema.ts --check')),
  licences: () => asOne(run('node src/tooling/licences.ts --check')),
  unit: unitTests,
  build: () => asOne(ensureBuilt()),
  size: () => asOne(checkSize()),
  fuzz: () => asOne(ensureBuilt() && run('node tests/fuzz/fuzz.ts --cases 2000 --seed 1')),
  browser: browserTests,
};

const chosen = process.argv.slice(2);
const unknown = chosen.filter((name) => !(name in CHECKS));
if (unknown.length > 0) {
  console.error(
    `There is no check named ${unknown.join(', ')}; there are: ${Object.keys(CHECKS).join(', ')}.`,
  );
  process.exit(2);
}

let passed = 0;
let failed = 0;
const failedChecks: string[] = [];
for (const [name, check] of Object.entries(CHECKS)) {
  if (chosen.length > 0 && !chosen.includes(name)) continue;
  console.log(`\n── ${name}`);
  const count = check();
  passed += count.passed;
  failed += count.failed;
  if (count.failed > 0) failedChecks.push(`${name} (${count.failed})`);
}
console.log(failedChecks.length > 0 ? `\nFailed: ${failedChecks.join(', ')}` : '\nAll is well.');
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 ? 1 : 0;
