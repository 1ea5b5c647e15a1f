/**
 * Marks a request that came in where pages can only be read. On the request itself and not among its headers, which whoever asks can
 * write; found by its name, as the server and the built app have no module in common.
 */
const FOR_READING = Symbol.for('ridgelarder.for-reading');

/** Marks a request, on its way into the app. */
export function markForReading(request: object): void {
  Object.assign(request, { [FOR_READING]: true });
}

/** @returns whether a request bears the mark. @param request as Node's server got it */
export const isForReading = (request: object | undefined): boolean =>
  request !== undefined && FOR_READING in request;

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
