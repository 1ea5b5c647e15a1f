/* How many rows of everyday tables come in without a change to the file, and how many are taken wrongly. */
import { compare, readEveryday, TABLES } from '../everyday-tables/compare.ts';

console.log(
  '| table | rows | come in | wrong | questions about columns |\n| --- | ---: | ---: | ---: | ---: |',
);
const sum = { rows: 0, taken: 0, wrong: 0 };
for (const name of TABLES) {
  const { read, expected } = await readEveryday(name);
  const { rows, taken, wrong, questions } = compare(name, read, expected);
  sum.rows += rows;
  sum.taken += taken;
  sum.wrong += wrong.length;
  console.log(`| ${name} | ${rows} | ${taken} | ${wrong.length} | ${questions} |`);
}
console.log(
  `| all | ${sum.rows} | ${sum.taken} (${((100 * sum.taken) / sum.rows).toFixed(1)} %) | ${sum.wrong} | |`,
);
