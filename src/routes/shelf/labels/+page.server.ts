import { isLoopback, readLabels } from '$lib/label-sheets/label-request.ts';
import { makeSheets } from '$lib/label-sheets/label-sheets.ts';
import { readersOrigin } from '$lib/server/reading.ts';
import { toHttpError } from '$lib/server/to-http-error.ts';
import { labelReasons } from '$lib/reasons/settings.ts';
import type { PageServerLoad } from './$types';

/** So many lots stand in the list to choose from, those sealed last; links reach every lot. */
const LOTS_LISTED = 200;

export const load: PageServerLoad = async ({ locals: { app }, parent, url }) => {
  const [{ shown }, lots] = await Promise.all([parent(), app.shelf.listLots()]).catch(toHttpError);
  const address = readersOrigin() ?? url.origin;
  const read = readLabels(url.searchParams, lots, shown.unitSystem, address);
  const chosen = new Set(read.chosen);
  const newest = lots
    .filter(({ code, pouches }) => pouches > 0 || chosen.has(code))
    .sort(
      (a, b) =>
        Number(chosen.has(b.code)) - Number(chosen.has(a.code)) || b.sealedOn.localeCompare(a.sealedOn),
    );
  return {
    ...read,
    choices: newest
      .slice(0, Math.max(LOTS_LISTED, chosen.size))
      .map(({ code, recipe, pouches }) => ({ code, recipe, pouches })),
    isEmpty: lots.length === 0,
    origin: address,
    isLoopback: read.request !== undefined && isLoopback(read.request.address),
    reasons: labelReasons(address),
    made: read.request && makeSheets(read.request, shown.unitSystem),
  };
};
