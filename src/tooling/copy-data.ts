/* `npm run copy-data`: copies all data from one folder or database to another. */
import { copyDataCommand } from './copy-data-command.ts';

const { exitCode, output, errors } = await copyDataCommand(process.argv.slice(2));
process.stderr.write(errors);
process.stdout.write(output);
process.exitCode = exitCode;
