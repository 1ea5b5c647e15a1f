import { qrCode } from '$lib/label-sheets/qr-code.ts';
import { readersOrigin } from '$lib/server/reading.ts';
import { sheetPaper } from '$lib/trip-views/sheet-papers.ts';
import { cardAssumptions } from '$lib/reasons/plan.ts';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ parent, url, locals: { readsOnly } }) => {
  const { shown, id } = await parent();
  const origin = readersOrigin();
  const address = origin && `${origin}/trips/${id}/card`;
  return {
    reasons: readsOnly ? undefined : { card: cardAssumptions() },
    paper: sheetPaper(url, shown.unitSystem),
    phones: address ? { address, qr: qrCode(address) } : undefined,
  };
};
