/* `npm run test:crash`: 200 rounds, or as many as are named; a second figure is the seed to begin with. */
import { crashRounds } from './rounds.ts';

const [rounds = 200, seed = Math.floor(Math.random() * 1e6)] = process.argv.slice(2).map(Number);
console.log(`seed ${seed}`);
console.log(`All is well: ${JSON.stringify(await crashRounds(rounds, seed, console.log))}`);
