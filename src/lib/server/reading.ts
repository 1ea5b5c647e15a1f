/** Set by the server, never by a browser that matters: this request came in where pages can only be read. */
export const READING_HEADER = 'x-ridgelarder-reading';

/** @returns where phones of the network read pages, where that was asked for. */
export const readersOrigin = (): string | undefined => process.env['RIDGELARDER_READERS_ORIGIN'] || undefined;

/** Variable with the origin of a proxy with TLS in front; set by the server. */
export const PUBLIC_ORIGIN = 'RIDGELARDER_PUBLIC_ORIGIN';

/** @returns the address to give to others: that of the proxy where there is one. @param origin that was asked */
export const publicOrigin = (origin: string): string => process.env[PUBLIC_ORIGIN] || origin;

/** Variable that the server sets when it listens beyond this machine: without a passphrase nobody is let in then. */
export const NEEDS_PASSPHRASE = 'RIDGELARDER_NEEDS_PASSPHRASE';

/** @returns the addresses of proxies on other machines, which `RIDGELARDER_PROXY` lists with commas between them */
export const proxies = (): string[] =>
  (process.env['RIDGELARDER_PROXY'] ?? '')
    .split(',')
    .map((address) => address.trim())
    .filter(Boolean);
