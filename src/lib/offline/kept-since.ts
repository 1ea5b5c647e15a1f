import type { KeptAnswer, KeptQuestion } from './kept-trips.ts';

/**
 * Asks the service worker where a page came from.
 *
 * @param pathname of the page that is shown
 * @returns the instant, ISO 8601, as of which a copy was kept, where it is that copy which is shown; `undefined` where the page
 *   came from the server, or there is no service worker
 */
export function keptSince(pathname: string): Promise<string | undefined> {
  const worker = navigator.serviceWorker?.controller;
  if (!worker) return Promise.resolve(undefined);
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }: MessageEvent<KeptAnswer>) => resolve(data.keptAt);
    const question: KeptQuestion = { pathname };
    worker.postMessage(question, [port2]);
  });
}
