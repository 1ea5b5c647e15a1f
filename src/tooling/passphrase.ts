/*
 * `npm run passphrase`: sets the passphrase of the data folder; `npm run passphrase -- --remove` takes it away. It is typed twice and not
 * shown; where standard input is no terminal, its first line is the passphrase.
 */
import { createInterface } from 'node:readline/promises';
import { Writable } from 'node:stream';
import { text } from 'node:stream/consumers';
import { Passphrase } from '../lib/server/access/passphrase.ts';
import { dataFolder } from '../lib/server/data-folder.ts';
import { problemWithPassphrase } from './passphrase-strength.ts';

function fail(message: string): never {
  console.error(message);
  process.exit(1);
}

/** @returns lines typed in answer to questions, which are shown while what is typed is not */
async function askUnseen(...questions: string[]): Promise<string[]> {
  const unseen = new Writable({ write: (_piece, _encoding, done) => done() });
  const terminal = createInterface({ input: process.stdin, output: unseen, terminal: true });
  terminal.once('SIGINT', () => fail('\nNothing was changed.'));
  const answers: string[] = [];
  for (const question of questions) {
    process.stderr.write(question);
    answers.push(await terminal.question(''));
    process.stderr.write('\n');
  }
  terminal.close();
  return answers;
}

async function typed(): Promise<string> {
  if (!process.stdin.isTTY) return (await text(process.stdin)).split(/\r?\n/)[0] ?? '';
  const [once = '', again] = await askUnseen('Passphrase: ', 'Once more: ');
  return once === again ? once : fail('The two are not the same, so nothing was changed.');
}

const passphrase = new Passphrase(dataFolder());
const [flag, ...more] = process.argv.slice(2);
if (more.length > 0 || (flag !== undefined && flag !== '--remove'))
  fail('Nothing was changed. "npm run passphrase" sets it, "npm run passphrase -- --remove" takes it away.');
if (flag === '--remove')
  console.log(
    (await passphrase.remove())
      ? 'The passphrase is removed: whoever uses this computer can change everything.'
      : 'There was no passphrase.',
  );
else {
  const entered = await typed();
  const problem = problemWithPassphrase(entered);
  if (problem) fail(`Nothing was changed. ${problem}`);
  await passphrase.set(entered);
  console.log(
    'The passphrase is set, and every device is signed out. Links that were given out go on: they are listed under Settings, Access.',
  );
}
