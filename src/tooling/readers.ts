import { isIP } from 'node:net';
import { networkInterfaces } from 'node:os';
import type { IncomingMessage, RequestListener } from 'node:http';
import { READING_HEADER } from '../lib/server/reading.ts';

/*
 * A second address, for the phones of the house: there, pages can be read that a code on a pouch or a card leads to, and nothing else. Nothing can be
 * changed through it, so that it needs no passphrase.
 */

/** What can be read there: the page of a lot, the card and packing lists of a trip (whose address nobody guesses), and what these pages are made of. */
const READABLE = [
  /^\/_app\//,
  /^\/[\w-]+\.(?:svg|png|webmanifest)$/,
  /^\/shelf\/(?!(?:new|import|labels|pictures|export\.csv|lots\.json)(?:\/|$))[^/]+(?:\/__data\.json)?$/,
  /^\/trips\/[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}\/(?:card\.html|(?:card|packing)(?:\/__data\.json)?)$/,
];

const NOT_HERE =
  'From this address, pouches and trail cards can be read, and nothing else. Go to the computer that Ridgelarder runs on for the rest.\n';

/** @returns a handler that lets reading through, marked as such, and refuses the rest. */
export function forReaders(origin: string, handler: RequestListener): RequestListener {
  const { host } = new URL(origin);
  return (request: IncomingMessage, response) => {
    const refuse = (status: number, text: string) =>
      response.writeHead(status, { 'content-type': 'text/plain; charset=utf-8' }).end(text);
    if (request.headers.host !== host) return refuse(421, `Ridgelarder is at ${origin}\n`);
    const { pathname } = new URL(request.url ?? '/', origin);
    const reads = request.method === 'GET' || request.method === 'HEAD';
    if (!reads || !READABLE.some((page) => page.test(pathname))) return refuse(403, NOT_HERE);
    request.headers[READING_HEADER] = 'yes';
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
