/*
 * `npm run test:crash`: 200 rounds, or as many as are named; a second figure is the seed to begin with. Then as many in which the power fails with each kill.
 */
import { Disk } from './kept-by-disk.ts';
import { crashRounds } from './rounds.ts';

const [rounds = 200, seed = Math.floor(Math.random() * 1e6)] = process.argv.slice(2).map(Number);
console.log(`seed ${seed}`);
console.log(`Killed, all is well: ${JSON.stringify(await crashRounds(rounds, seed, console.log))}`);
const disk = await Disk.make();
if (typeof disk === 'string') console.log(`The loss of power was NOT tried: ${disk}`);
else {
  const counts = await crashRounds(rounds, seed, console.log, disk);
  console.log(`Without power, all is well: ${JSON.stringify(counts)}`);
  await disk.remove();
}
