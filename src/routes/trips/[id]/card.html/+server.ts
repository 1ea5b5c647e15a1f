import { createHash } from 'node:crypto';
import { render } from 'svelte/server';
import app from '../../../../app.css?inline';
import a4 from '$lib/components/trip/paper/a4.css?inline';
import a5 from '$lib/components/trip/paper/a5.css?inline';
import halfLetter from '$lib/components/trip/paper/half-letter.css?inline';
import letter from '$lib/components/trip/paper/letter.css?inline';
import sheet from '$lib/components/trip/paper/sheet.css?inline';
import trailCard from '$lib/components/trip/trail-card.css?inline';
import TrailCard from '$lib/components/trip/TrailCard.svelte';
import { planStoredTrip } from '$lib/server/plan-stored-trip.ts';
import { toHttpError } from '$lib/server/to-http-error.ts';
import { language, say } from '$lib/texts/say.ts';
import { sheetPaper, type SheetPaper } from '$lib/trip-views/sheet-papers.ts';
import { cardView } from '$lib/trip-views/card.ts';
import type { RequestHandler } from './$types';

const PAPERS: Readonly<Record<SheetPaper, string>> = { a4, a5, 'half-letter': halfLetter, letter };
const FILE = `.file { display: flex; justify-content: center; padding: var(--space-3) }
@media print { .file { display: block; padding: 0 } }`;
/** Nothing is loaded and nothing runs, wherever the file ends up; it looks as this one style says. */
const policyFor = (style: string): string =>
  `default-src 'none'; style-src 'sha256-${createHash('sha256').update(style).digest('base64')}'`;

/** The trail card as one file that holds all it needs: the component of the page and its styles, no script, no address. */
export const GET: RequestHandler = async ({ locals, params, url }) => {
  const [{ stored, plan }, { unitSystem }] = await Promise.all([
    planStoredTrip(locals.app, params.id),
    locals.app.settings.get(),
  ]).catch(toHttpError);
  const { body } = render(TrailCard, { props: { card: cardView(plan), system: unitSystem } });
  const style = [app, sheet, trailCard, PAPERS[sheetPaper(url, unitSystem)], FILE].join('\n');
  const policy = policyFor(style);
  const html = `<!doctype html>
<html lang="${language()}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${escaped(stored.trip.name)} · ${escaped(say('Trail card'))}</title>
<style>${style}</style>
</head>
<body>
<main class="file">
<h1 class="visually-hidden">${escaped(say('Trail card'))}</h1>
${withoutMarks(body)}
</main>
</body>
</html>
`;
  const fileName = encodeURIComponent(`${say('{trip}, trail card', { trip: stored.trip.name })}.html`);
  return new Response(html, {
    headers: {
      'content-type': 'text/html; charset=utf-8',
      'content-disposition': `inline; filename="trail-card.html"; filename*=UTF-8''${fileName}`,
      'content-security-policy': `${policy}; frame-ancestors 'none'`,
    },
  });
};

const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');

/** The comments are for a page that comes alive; text cannot hold one, as its < is escaped. */
const withoutMarks = (html: string): string => html.replaceAll(/<!--.*?-->/gs, '');
