import { qrCode } from '$lib/label-sheets/qr-code.ts';
import { readersOrigin } from '$lib/server/reading.ts';
import { plannedForPage } from '$lib/server/plan-stored-trip.ts';
import { cardView } from '$lib/trip-views/card.ts';
import { sheetPaper } from '$lib/trip-views/sheet-papers.ts';
import { cardAssumptions } from '$lib/reasons/plan.ts';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals, params, parent, url }) => {
  const { plan } = await plannedForPage(locals, params.id);
  const { shown, id } = await parent();
  const origin = readersOrigin();
  const address = origin && `${origin}/trips/${id}/card`;
  return {
    card: cardView(plan),
    reasons: locals.readsOnly ? undefined : { card: cardAssumptions() },
    paper: sheetPaper(url, shown.unitSystem),
    phones: address ? { address, qr: qrCode(address) } : undefined,
  };
};
