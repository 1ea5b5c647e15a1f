/* `npm run backup`: copies all data. */
import { backupCommand } from './backup-command.ts';

const { exitCode, output, errors } = await backupCommand(process.argv.slice(2));
process.stderr.write(errors);
process.stdout.write(output);
process.exitCode = exitCode;
