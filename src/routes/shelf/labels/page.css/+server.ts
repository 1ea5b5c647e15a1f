import { error } from '@sveltejs/kit';
import { PAPERS } from '$lib/label-sheets/papers.ts';
import { say } from '$lib/texts/say.ts';
import { sheetStyle } from '$lib/label-sheets/sheet-style.ts';
import type { RequestHandler } from './$types';

/** What a sheet of labels measures, for the page and for the printer. */
export const GET: RequestHandler = ({ url }) => {
  const paper = PAPERS.find(({ id }) => id === url.searchParams.get('paper'));
  if (!paper) error(404, say('There is no such paper.'));
  return new Response(sheetStyle(paper), { headers: { 'content-type': 'text/css' } });
};
