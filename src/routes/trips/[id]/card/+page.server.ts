import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ parent, url }) => {
  const { shown } = await parent();
  const asked = url.searchParams.get('paper');
  const usual = shown.unitSystem === 'us' ? 'half-letter' : 'a5';
  const paper: 'a5' | 'half-letter' = asked === 'a5' || asked === 'half-letter' ? asked : usual;
  return { paper };
};
