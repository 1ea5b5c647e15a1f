/** Where everything is kept: `RIDGELARDER_DATA`, or `data` where the program was started. */
export const dataFolder = (): string => process.env['RIDGELARDER_DATA'] || 'data';

/** The file of a data folder that holds everything. */
export const DATABASE_FILE = 'ridgelarder.sqlite';

/** Within a data folder: the copies. */
export const BACKUP_FOLDER = 'backups';
