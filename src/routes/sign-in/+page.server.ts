import { fail, redirect } from '@sveltejs/kit';
import type { RefusedForm } from '$lib/forms/read-form.ts';
import { letOut } from '$lib/server/access/admit.ts';
import { isLoopbackAddress, pathWithin } from '$lib/server/access/own-origin.ts';
import { signIn } from '$lib/server/access/sign-in.ts';
import { toFailure, toHttpError } from '$lib/server/to-http-error.ts';
import { say } from '$lib/texts/say.ts';
import type { Actions, PageServerLoad } from './$types';

/** Longer ones are never set, and would only keep the computer busy. */
const LONGEST = 2000;

export const load: PageServerLoad = ({ locals, url }) => {
  const to = pathWithin(url.searchParams.get('to') ?? undefined, url.origin);
  if (!locals.readsOnly) redirect(303, to);
  return {
    to,
    hasLeft: url.searchParams.has('left'),
    link: locals.link && { forWhom: locals.link.forWhom },
    isPlain: url.protocol === 'http:' && !isLoopbackAddress(url.hostname.replace(/^\[|\]$/g, '')),
  };
};

export const actions: Actions = {
  in: async (event) => {
    const form = await event.request.formData();
    const sent = (name: string) => String(form.get(name) ?? '');
    const to = pathWithin(sent('to'), event.url.origin);
    const refusal = (message: string): RefusedForm => ({
      entered: { to: [to] },
      problems: [{ field: 'passphrase', message }],
    });
    let answer;
    try {
      answer = await signIn(event, sent('passphrase').slice(0, LONGEST));
    } catch (caught) {
      return toFailure(event, caught, refusal);
    }
    if (answer.outcome === 'right') redirect(303, to);
    if (answer.outcome === 'wrong')
      return fail(403, refusal(say('wrong passphrase; check capital letters and the keyboard language')));
    event.setHeaders({ 'retry-after': String(answer.waitS) });
    return fail(
      429,
      refusal(
        say('too many wrong attempts; try again in {minutes, plural, one {# minute} other {# minutes}}', {
          minutes: Math.ceil(answer.waitS / 60),
        }),
      ),
    );
  },

  /** Signs this browser out; what it kept of trips is forgotten by the page that follows. */
  out: async ({ locals, cookies, url }) => {
    if (locals.session) await locals.app.access.sessions.end(locals.session.tokenHash).catch(toHttpError);
    letOut(cookies, url);
    redirect(303, '/sign-in?left');
  },
};
