/* `npm run restore`: puts a copy of all data back. */
import { restoreCommand } from './backup-command.ts';

const { exitCode, output, errors } = await restoreCommand(process.argv.slice(2));
process.stderr.write(errors);
process.stdout.write(output);
process.exitCode = exitCode;
