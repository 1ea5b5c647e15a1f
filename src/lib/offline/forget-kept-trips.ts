import { TRIP_CACHES } from './kept-trips.ts';

/** For whoever leaves this device: what it kept of trips is gone. Notes that were not sent stay. */
export async function forgetKeptTrips(): Promise<void> {
  if (!('caches' in globalThis)) return; // there are none but on secure pages
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name.startsWith(TRIP_CACHES)).map((name) => caches.delete(name)));
}
