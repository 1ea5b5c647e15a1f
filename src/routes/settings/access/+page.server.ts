import { fail, redirect } from '@sveltejs/kit';
import { sayDone } from '$lib/forms/done.ts';
import { FormReader, type RefusedForm } from '$lib/forms/read-form.ts';
import { isLoopback } from '$lib/label-sheets/label-request.ts';
import { qrCode } from '$lib/label-sheets/qr-code.ts';
import { letOut } from '$lib/server/access/admit.ts';
import { SET_IT } from '$lib/server/access/passphrase.ts';
import { ReadLinkOrder } from '$lib/server/access/read-link-repository.ts';
import { IDLE_DAYS, LONGEST_DAYS } from '$lib/server/access/session-repository.ts';
import { publicOrigin } from '$lib/server/reading.ts';
import { toHttpError } from '$lib/server/to-http-error.ts';
import { say } from '$lib/texts/say.ts';
import { linkReasons } from '$lib/reasons/settings.ts';
import type { Actions, PageServerLoad } from './$types';

/** The value of the list of trips that stands for the shelf. */
const SHELF = 'shelf';

export const load: PageServerLoad = async ({ locals: { app, session }, url }) => {
  const stored = await app.access.passphrase.stored().catch(toHttpError);
  const [sessions, links, trips] = await Promise.all([
    stored ? app.access.sessions.list(stored.id) : [],
    app.access.links.list(),
    app.trips.listTrips(),
  ]).catch(toHttpError);
  const now = new Date().toISOString();
  return {
    photosForReaders: (await app.settings.get().catch(toHttpError)).photosForReaders,
    hasPassphrase: stored !== undefined,
    setIt: SET_IT,
    idleDays: IDLE_DAYS,
    longestDays: LONGEST_DAYS,
    devices: sessions.map(({ tokenHash, startedAt, lastSeenAt }) => ({
      startedAt,
      lastSeenAt,
      isThis: tokenHash === session?.tokenHash,
    })),
    links: links.map((link) => ({ ...link, hasExpired: link.expiresAt <= now })),
    opens: [
      { value: SHELF, label: say('the lots on the shelf') },
      ...trips.map(({ id, trip }) => ({
        value: id,
        label: say('the trip {name}, {date}', { name: trip.name, date: trip.startDate }),
      })),
    ],
    reasons: linkReasons(),
    onlyHere: isLoopback(publicOrigin(url.origin)),
  };
};

export const actions: Actions = {
  /** The code of the link is shown on the page that answers, and nowhere else ever. */
  give: async ({ request, locals: { app }, url }) => {
    const read = new FormReader(await request.formData(), 'metric');
    const opens = read.text('opens');
    const isTrip = opens !== undefined && opens !== SHELF;
    if (isTrip && !(await app.trips.getTrip(opens).catch(toHttpError)))
      read.add([{ field: 'opens', message: say('this trip is not there any more; choose another') }]);
    const order = read.accept(
      ReadLinkOrder.safeParse({
        forWhom: read.text('forWhom'),
        tripId: isTrip ? opens : undefined,
        mayNote: read.choices('mayNote').includes('yes'),
        days: read.number('days'),
      }),
    );
    if (!order) return fail<RefusedForm>(422, read.refused());
    const token = await app.access.links.give(order).catch(toHttpError);
    const address = `${publicOrigin(url.origin)}/sign-in/link#${token}`;
    return { given: { forWhom: order.forWhom, address, qr: qrCode(address) } };
  },

  photos: async ({ request, locals: { app }, cookies }) => {
    const read = new FormReader(await request.formData(), 'metric');
    const photosForReaders = read.choices('photosForReaders').includes('yes');
    await app.settings.save({ ...(await app.settings.get()), photosForReaders }).catch(toHttpError);
    sayDone(cookies, 'settings-saved');
    redirect(303, '/settings/access');
  },

  revoke: async ({ request, locals: { app } }) => {
    const read = new FormReader(await request.formData(), 'metric');
    await app.access.links.revoke(read.text('id') ?? '').catch(toHttpError);
    return { isRevoked: true };
  },

  everywhere: async ({ locals: { app }, cookies, url }) => {
    await app.access.sessions.endAll().catch(toHttpError);
    letOut(cookies, url);
    redirect(303, '/sign-in?left');
  },
};
