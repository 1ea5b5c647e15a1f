import {
  createServer,
  type IncomingMessage,
  type RequestListener,
  type Server,
  type ServerResponse,
} from 'node:http';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { forReaders, problemWithAddress } from './readers.ts';
import { ROOT } from './run.ts';

const HOST = '127.0.0.1';
/** Ports tried, one after the other, when the wanted one is taken. */
const PORTS_TRIED = 20;
const LARGEST_UPLOAD = '80M';
/** Requests that still run this long after the stop are cut off. */
const PATIENCE_MS = 5000;

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
    server.once('error', (error: NodeJS.ErrnoException) =>
      error.code === 'EADDRINUSE' ? resolve(false) : reject(error),
    );
    server.listen(port, host, () => resolve(true));
  });
}

async function listenOnFree(server: Server, wanted: number, host = HOST): Promise<number> {
  for (let port = wanted; port < wanted + PORTS_TRIED; port++) {
    if (await listen(server, port, host)) {
      const address = server.address();
      return address !== null && typeof address === 'object' ? address.port : port;
    }
  }
  throw new Error(`Ports ${wanted} to ${wanted + PORTS_TRIED - 1} are all taken. Set PORT to a free one.`);
}

/**
 * @param origin what RIDGELARDER_ORIGIN says
 * @returns what is wrong with it, for the user; `undefined` where it is the origin of a page that came over TLS
 */
function problemWithOrigin(origin: string): string | undefined {
  const url = URL.parse(origin);
  if (url?.protocol === 'https:' && url.origin === origin) return undefined;
  return `RIDGELARDER_ORIGIN is "${origin}", which is not where a proxy with TLS can be found. Set it to https:// and a name, such as https://larder.home.arpa, without a slash at the end, or leave it out.`;
}

/**
 * Only requests addressed to our own origin reach the app: a page opened under another name of this machine could not
 * post its forms (its origin would differ), and a foreign name that resolves to this machine has no business here.
 *
 * @param behind the origin of the proxy in front, if there is one; to the app, what is asked of us directly was asked there
 */
function atOwnAddress(origin: string, behind: string | undefined, handler: RequestListener): RequestListener {
  const { host } = new URL(origin);
  const hosts = behind === undefined ? [host] : [host, new URL(behind).host];
  return (request: IncomingMessage, response: ServerResponse) => {
    if (behind !== undefined && request.headers.origin === origin) request.headers.origin = behind;
    if (request.headers.host !== undefined && hosts.includes(request.headers.host))
      return handler(request, response);
    if (request.headers.host?.startsWith('localhost'))
      response.writeHead(307, { location: origin + request.url }).end();
    else response.writeHead(421, { 'content-type': 'text/plain' }).end(`Ridgelarder is at ${origin}\n`);
  };
}

/**
 * Serves the built app on 127.0.0.1, and for reading at another address of this machine where one is given.
 *
 * @param wanted the port to listen on; where it is taken, the next free one; 0 for any
 * @param readersAt an IPv4 address of this machine
 * @param behind the origin at which a proxy on this machine passes requests on, `https://…`
 * @throws where no port is free, the other address is none of this machine, or the origin is none
 */
export async function serve(wanted: number, readersAt?: string, behind?: string): Promise<Running> {
  const problem =
    (readersAt === undefined ? undefined : problemWithAddress(readersAt)) ??
    (behind === undefined ? undefined : problemWithOrigin(behind));
  if (problem) throw new Error(problem);
  const server = createServer();
  const port = await listenOnFree(server, wanted);
  const origin = `http://${HOST}:${port}`;
  const servers = [server];
  let readersOrigin: string | undefined;
  if (readersAt !== undefined) {
    const readers = createServer();
    readersOrigin = `http://${readersAt}:${await listenOnFree(readers, port, readersAt)}`;
    servers.push(readers);
  }
  // The handler reads its settings from the environment when it is loaded, so it is loaded after the port is known.
  Object.assign(process.env, {
    ORIGIN: behind ?? origin,
    BODY_SIZE_LIMIT: LARGEST_UPLOAD,
    RIDGELARDER_ROOT: ROOT,
    RIDGELARDER_READERS_ORIGIN: readersOrigin ?? '',
  });
  const build: { handler: RequestListener } = await import(
    pathToFileURL(path.join(ROOT, 'build/handler.js')).href
  );
  server.on('request', atOwnAddress(origin, behind, build.handler));
  if (readersOrigin !== undefined) servers[1]?.on('request', forReaders(readersOrigin, build.handler));

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
