/** Where everything is kept: `RIDGELARDER_DATA`, or `data` where the program was started. */
export const dataFolder = (): string => process.env['RIDGELARDER_DATA'] || 'data';
