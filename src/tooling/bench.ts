/* `npm run bench`: runs the benchmarks in tests/bench in turn, but for Lighthouse (`npm run bench:lighthouse`) and the search for menus (`npm run bench:menu`). `npm run bench -- plan` runs those whose name holds "plan". */
import { globSync } from 'node:fs';
import { ROOT, run } from './run.ts';

const wanted = process.argv.slice(2);
const benches = globSync('tests/bench/*.ts', {
  cwd: ROOT,
  exclude: ['**/*instances.ts', '**/lighthouse.ts', '**/menu.ts'],
})
  .toSorted()
  .filter((file) => wanted.length === 0 || wanted.some((part) => file.includes(part)));

for (const file of benches) {
  console.log(`\n── ${file}`);
  if (!run(`node --expose-gc ${file}`)) process.exitCode = 1;
}
