/* `npm run --silent plan`: plans a trip from files and writes the plan to standard output. */
import { planCommand } from './plan-command.ts';

const { exitCode, output, errors } = await planCommand(process.argv.slice(2), process.stdin);
process.stderr.write(errors);
process.stdout.write(output);
process.exitCode = exitCode;
