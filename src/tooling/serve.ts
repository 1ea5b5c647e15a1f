import {
  createServer,
  type IncomingMessage,
  type RequestListener,
  type Server,
  type ServerResponse,
} from 'node:http';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { ROOT } from './run.ts';

const HOST = '127.0.0.1';
/** Ports tried, one after the other, when the wanted one is taken. */
const PORTS_TRIED = 20;
const LARGEST_UPLOAD = '80M';
/** Requests that still run this long after the stop are cut off. */
const PATIENCE_MS = 5000;

export type Running = { readonly origin: string; readonly port: number; stop(): Promise<void> };

/** @returns whether the server now listens on `port`; `false` where another program has it. */
function listen(server: Server, port: number): Promise<boolean> {
  return new Promise((resolve, reject) => {
    server.once('error', (error: NodeJS.ErrnoException) =>
      error.code === 'EADDRINUSE' ? resolve(false) : reject(error),
    );
    server.listen(port, HOST, () => resolve(true));
  });
}

async function listenOnFree(server: Server, wanted: number): Promise<number> {
  for (let port = wanted; port < wanted + PORTS_TRIED; port++) {
    if (await listen(server, port)) {
      const address = server.address();
      return address !== null && typeof address === 'object' ? address.port : port;
    }
  }
  throw new Error(`Ports ${wanted} to ${wanted + PORTS_TRIED - 1} are all taken. Set PORT to a free one.`);
}

/**
 * Only requests addressed to our own origin reach the app: a page opened under another name of this machine could not
 * post its forms (its origin would differ), and a foreign name that resolves to this machine has no business here.
 */
function atOwnAddress(origin: string, handler: RequestListener): RequestListener {
  const { host } = new URL(origin);
  return (request: IncomingMessage, response: ServerResponse) => {
    if (request.headers.host === host) return handler(request, response);
    if (request.headers.host?.startsWith('localhost'))
      response.writeHead(307, { location: origin + request.url }).end();
    else response.writeHead(421, { 'content-type': 'text/plain' }).end(`Ridgelarder is at ${origin}\n`);
  };
}

/**
 * Serves the built app on 127.0.0.1.
 *
 * @param wanted the port to listen on; where it is taken, the next free one; 0 for any
 * @throws where no port is free
 */
export async function serve(wanted: number): Promise<Running> {
  const server = createServer();
  const port = await listenOnFree(server, wanted);
  const origin = `http://${HOST}:${port}`;
  // The handler reads its settings from the environment when it is loaded, so it is loaded after the port is known.
  Object.assign(process.env, { ORIGIN: origin, BODY_SIZE_LIMIT: LARGEST_UPLOAD, RIDGELARDER_ROOT: ROOT });
  const build: { handler: RequestListener } = await import(
    pathToFileURL(path.join(ROOT, 'build/handler.js')).href
  );
  server.on('request', atOwnAddress(origin, build.handler));

  const stop = async () => {
    const closed = new Promise((resolve) => server.close(resolve));
    server.closeIdleConnections();
    setTimeout(() => server.closeAllConnections(), PATIENCE_MS).unref();
    await closed;
    // The app closes its database on this event of SvelteKit's Node server.
    process.emit('sveltekit:shutdown' as never, 'SIGTERM' as never);
  };
  return { origin, port, stop };
}
