/* `npm run --silent recipe`: reads a recipe as people write it, and writes what was understood to standard output. */
import { recipeCommand } from './recipe-command.ts';

const { exitCode, output, errors } = await recipeCommand(process.argv.slice(2), process.stdin);
process.stderr.write(errors);
process.stdout.write(output);
process.exitCode = exitCode;
