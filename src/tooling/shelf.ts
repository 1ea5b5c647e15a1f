/* `npm run --silent shelf`: says what an import would take of a table, without a database. */
import { shelfCommand } from './shelf-command.ts';

const { exitCode, output, errors } = await shelfCommand(process.argv.slice(2), process.stdin);
process.stderr.write(errors);
process.stdout.write(output);
process.exitCode = exitCode;
