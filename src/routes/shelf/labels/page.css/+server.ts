import { error } from '@sveltejs/kit';
import { PAPERS } from '$lib/label-sheets/papers.ts';
import type { RequestHandler } from './$types';

/** Tells the printer the size of a page of labels: a rule of its own, as page sizes take no custom properties. */
export const GET: RequestHandler = ({ url }) => {
  const paper = PAPERS.find(({ id }) => id === url.searchParams.get('paper'));
  if (!paper) error(404, 'There is no such paper.');
  const rule = `@page { size: ${paper.pageWidthMm}mm ${paper.pageHeightMm}mm; margin: 0; }\n`;
  return new Response(rule, { headers: { 'content-type': 'text/css' } });
};
