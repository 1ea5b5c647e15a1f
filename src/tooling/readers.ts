import { isIP } from 'node:net';
import { networkInterfaces } from 'node:os';
import type { RequestListener } from 'node:http';
import { markForReading } from '../lib/server/reading.ts';

/*
 * A second address, for the phones of the house: there, pages can be read that a code on a pouch or a card leads to, and nothing else
 * (src/lib/server/access/read-scope.ts). Nothing can be changed through it, so that it needs no passphrase.
 */

const NOT_HERE =
  'From this address, pouches and trail cards can be read, and nothing else. Go to the computer that Ridgelarder runs on for the rest.\n';

/** @returns a handler that lets reading through, marked as such, and refuses the rest. */
export function forReaders(handler: RequestListener): RequestListener {
  return (request, response) => {
    if (request.method !== 'GET' && request.method !== 'HEAD') {
      response.writeHead(403, { 'content-type': 'text/plain; charset=utf-8' }).end(NOT_HERE);
      return;
    }
    markForReading(request);
    return handler(request, response);
  };
}

/**
 * @param address an address of this machine, such as 192.168.1.20
 * @returns what is wrong with it, for the user; `undefined` where it can be listened on
 */
export function problemWithAddress(address: string): string | undefined {
  const own = Object.values(networkInterfaces())
    .flatMap((entries) => entries ?? [])
    .filter(({ family, internal }) => family === 'IPv4' && !internal)
    .map((entry) => entry.address);
  if (isIP(address) === 4 && (own.includes(address) || address.startsWith('127.'))) return undefined;
  return `RIDGELARDER_READERS is "${address}", which is no IPv4 address of this machine. ${
    own.length > 0 ? `Set it to ${own.join(' or ')}` : 'This machine is in no network now'
  }, or leave it out.`;
}
