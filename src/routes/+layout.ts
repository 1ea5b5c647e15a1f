import { browser, version } from '$app/environment';
import { language } from '$lib/texts/languages';
import { loadTexts, textsAddress } from '$lib/texts/page-texts';
import type { LayoutLoad } from './$types';

/** What the next page says is there before it is shown; reading the route makes this run for each. */
export const load: LayoutLoad = async ({ data, route: { id } }) => {
  if (browser && language() !== 'en')
    await loadTexts(textsAddress(version, language(), id)).catch(() => undefined); // a text that is missed then is reported
  return data;
};
