import { createServer, type RequestListener, type Server, type ServerResponse } from 'node:http';
import { isIP } from 'node:net';
import { networkInterfaces } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import {
  hostOf,
  isLocalhost,
  isLoopbackAddress,
  isTakenElsewhere,
  originAsked,
  type KnownNames,
} from '../lib/server/access/own-origin.ts';
import { SET_IT } from '../lib/server/access/passphrase.ts';
import { securityHeaders } from '../lib/server/access/response-headers.ts';
import { RETRY_AFTER_S } from '../lib/server/errors.ts';
import { NEEDS_PASSPHRASE, proxies, PUBLIC_ORIGIN } from '../lib/server/reading.ts';
import { forReaders, problemWithAddress } from './readers.ts';
import { ROOT } from './run.ts';

/** Where only this machine reaches the program. */
const LOOPBACK = '127.0.0.1';
/** Every address of the machine: what arrives at any of them is heard. */
const EVERYWHERE = ['0.0.0.0', '::'];
/** Tells the app whether it was asked over TLS, by a proxy in front. */
const PROTOCOL_HEADER = 'x-ridgelarder-protocol';
/** Settings of the app's server that would let headers, or one origin for all, say which name was asked and from where; `originAsked` and `addressOf` do. */
const OF_CLIENTS = ['ORIGIN', 'HOST_HEADER', 'PORT_HEADER', 'ADDRESS_HEADER', 'XFF_DEPTH'];
/** Ports tried, one after the other, when the wanted one is taken. */
const PORTS_TRIED = 20;
const LARGEST_UPLOAD = '80M';
/** Requests that still run this long after the stop are cut off. */
const PATIENCE_MS = 5000;

export type Wanted = {
  /** The port to listen on; where it is taken, the next free one; 0 for any. */
  readonly port: number;
  /** The address to listen on; left out, only this machine is heard. */
  readonly address?: string | undefined;
  /** An IPv4 address of this machine at which phones can read. */
  readonly readersAt?: string | undefined;
  /** Whether a passphrase is set; beyond this machine nothing is served without. */
  readonly hasPassphrase: boolean;
} & KnownNames;

export type Running = {
  readonly origin: string;
  readonly port: number;
  /** Where phones can read, where that was asked for. */
  readonly readersOrigin?: string;
  stop(): Promise<void>;
};

/** @returns whether the server now listens on `port`; `false` where another program has it. */
function listen(server: Server, port: number, host: string): Promise<boolean> {
  return new Promise((resolve, reject) => {
    server.once('error', (error: NodeJS.ErrnoException) => {
      if (error.code === 'EADDRINUSE') resolve(false);
      else if (error.code === 'EADDRNOTAVAIL') reject(new Error(`${host} is no address of this machine.`));
      else reject(error);
    });
    server.listen(port, host, () => resolve(true));
  });
}

async function listenOnFree(server: Server, wanted: number, host: string): Promise<number> {
  for (let port = wanted; port < wanted + PORTS_TRIED; port++) {
    if (await listen(server, port, host)) {
      const address = server.address();
      return address !== null && typeof address === 'object' ? address.port : port;
    }
  }
  throw new Error(`Ports ${wanted} to ${wanted + PORTS_TRIED - 1} are all taken. Set PORT to a free one.`);
}

/** @returns what is wrong with what is wanted, for the user; `undefined` where it can be tried */
export function problemWith({
  address = LOOPBACK,
  readersAt,
  names,
  behind,
  hasPassphrase,
}: Wanted): string | undefined {
  if (isIP(address) === 0)
    return `RIDGELARDER_HOST is "${address}", which is no address. Set it to an address of this machine such as 192.168.1.20, to 0.0.0.0 for all of them, or leave it out.`;
  if (behind !== undefined && !isTlsOrigin(behind))
    return `RIDGELARDER_ORIGIN is "${behind}", which is not where a proxy with TLS can be found. Set it to https:// and a name, such as https://larder.home.arpa, without a slash at the end, or leave it out.`;
  const odd = names.find((name) => URL.parse(`http://${name}`)?.host !== name);
  if (odd !== undefined)
    return `RIDGELARDER_NAMES holds "${odd}", which is no name of a computer. Set it to names with commas between them, such as larder.local,pantry.home.arpa, or leave it out.`;
  const noAddress = proxies().find((proxy) => isIP(proxy) === 0);
  if (noAddress !== undefined)
    return `RIDGELARDER_PROXY holds "${noAddress}", which is no address. Set it to the addresses that the proxy asks from, such as 192.168.1.5, or leave it out where the proxy is on this machine.`;
  if (!isLoopbackAddress(address) && !hasPassphrase)
    return `RIDGELARDER_HOST is ${address}, so that others in the network could change everything here, and no passphrase is set. Set one first:\n\n    ${SET_IT}\n\nThen start again; or leave RIDGELARDER_HOST out.`;
  return readersAt === undefined ? undefined : problemWithAddress(readersAt);
}

const isTlsOrigin = (origin: string): boolean => {
  const url = URL.parse(origin);
  return url?.protocol === 'https:' && url.origin === origin;
};

/**
 * Only requests addressed to one of our own names reach the app, and each is told under which: a foreign name that leads to this machine
 * has no business here. Every response bears the headers that keep other sites out.
 *
 * @param at the origin to name to whoever asked for another
 */
function atOwnNames(at: string, known: KnownNames, handler: RequestListener): RequestListener {
  return (request, response) => {
    const { host } = request.headers;
    const arrival = { address: request.socket.localAddress ?? '', port: request.socket.localPort ?? 0 };
    const origin = originAsked(host, arrival, known);
    for (const [name, value] of Object.entries(securityHeaders(origin))) response.setHeader(name, value);
    sayWhen(response);
    if (!request.url?.startsWith('/')) response.writeHead(400).end();
    else if (isTakenElsewhere(request.headers)) response.writeHead(403).end();
    else if (origin !== undefined) {
      request.headers[PROTOCOL_HEADER] = new URL(origin).protocol.slice(0, -1);
      handler(request, response);
    } else if (isLocalhost(host, arrival))
      response.writeHead(307, { location: `http://${hostOf(arrival)}${request.url}` }).end();
    else
      response
        .writeHead(421, { 'content-type': 'text/plain; charset=utf-8' })
        .end(
          `Ridgelarder is at ${at}. Where it has another name in your network, start it with RIDGELARDER_NAMES set to that name.\n`,
        );
  };
}

/** Lets what is busy (503) say when to ask again. Here, since what is refused before a page was found passes by the app. */
function sayWhen(response: ServerResponse): void {
  const writeHead = response.writeHead.bind(response) as (...head: unknown[]) => ServerResponse;
  response.writeHead = (...head: unknown[]) => {
    if (head[0] === 503 && !response.hasHeader('retry-after'))
      response.setHeader('retry-after', RETRY_AFTER_S);
    return writeHead(...head);
  };
}

/** @returns the address by which this machine is reached: of those of the network the first, where it listens on all */
function namedAddress(address: string): string {
  if (!EVERYWHERE.includes(address)) return address;
  const own = Object.values(networkInterfaces()).flatMap((entries) => entries ?? []);
  return own.find(({ family, internal }) => family === 'IPv4' && !internal)?.address ?? LOOPBACK;
}

/**
 * Serves the built app, on 127.0.0.1 where no other address is wanted, and for reading at another address of this machine where one is given.
 *
 * @throws where no port is free, an address is none of this machine, or `problemWith` finds something
 */
export async function serve(wanted: Wanted): Promise<Running> {
  const problem = problemWith(wanted);
  if (problem) throw new Error(problem);
  const { address = LOOPBACK, readersAt, names, behind } = wanted;
  const server = createServer();
  const port = await listenOnFree(server, wanted.port, address);
  const origin = `http://${hostOf({ address: namedAddress(address), port })}`;
  const servers = [server];
  let readersOrigin: string | undefined;
  if (readersAt !== undefined) {
    const readers = createServer();
    readersOrigin = `http://${readersAt}:${await listenOnFree(readers, port, readersAt)}`;
    servers.push(readers);
  }
  // The handler reads its settings from the environment when it is loaded, so it is loaded after the port is known.
  Object.assign(process.env, {
    PROTOCOL_HEADER,
    BODY_SIZE_LIMIT: LARGEST_UPLOAD,
    RIDGELARDER_ROOT: ROOT,
    RIDGELARDER_READERS_ORIGIN: readersOrigin ?? '',
    [PUBLIC_ORIGIN]: behind ?? '',
    [NEEDS_PASSPHRASE]: isLoopbackAddress(address) ? '' : 'yes',
  });
  for (const name of OF_CLIENTS) delete process.env[name];
  const build: { handler: RequestListener } = await import(
    pathToFileURL(path.join(ROOT, 'build/handler.js')).href
  );
  server.on('request', atOwnNames(origin, { names, behind }, build.handler));
  if (readersOrigin !== undefined)
    servers[1]?.on('request', atOwnNames(readersOrigin, { names: [] }, forReaders(build.handler)));

  const stop = async () => {
    const closed = servers.map((open) => new Promise((resolve) => open.close(resolve)));
    servers.forEach((open) => open.closeIdleConnections());
    setTimeout(() => servers.forEach((open) => open.closeAllConnections()), PATIENCE_MS).unref();
    await Promise.all(closed);
    // The app closes its database on this event of SvelteKit's Node server.
    process.emit('sveltekit:shutdown' as never, 'SIGTERM' as never);
  };
  return { origin, port, ...(readersOrigin !== undefined && { readersOrigin }), stop };
}
