/** Set by the server, never by a browser that matters: this request came in where pages can only be read. */
export const READING_HEADER = 'x-ridgelarder-reading';

/** @returns where phones of the network read pages, where that was asked for. */
export const readersOrigin = (): string | undefined => process.env['RIDGELARDER_READERS_ORIGIN'] || undefined;
