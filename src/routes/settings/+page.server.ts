import { redirect } from '@sveltejs/kit';
import { sayDone } from '$lib/forms/done.ts';
import { switchFindKey } from '$lib/forms/find-key.ts';
import { FormReader } from '$lib/forms/read-form.ts';
import { partActions, versionsOf } from '$lib/forms/part-actions.ts';
import {
  readSettingsPart,
  SETTINGS_PARTS,
  settingsChoices,
  settingsFields,
  settingsLabel,
} from '$lib/forms/settings-form.ts';
import { defaultSettings } from '$lib/planning/model/settings.ts';
import { language } from '$lib/texts/say.ts';
import { settingsReasons } from '$lib/reasons/settings.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals }) => {
  const settings = await locals.app.settings.get();
  return {
    fields: settingsFields(settings),
    usual: settingsFields({ ...defaultSettings(), unitSystem: settings.unitSystem }),
    versions: versionsOf(SETTINGS_PARTS, settings),
    currencies: currencies(),
    reasons: settingsReasons(settings.unitSystem),
  };
};

export const actions = {
  findKey: async ({ request, cookies }) => {
    const read = new FormReader(await request.formData(), 'metric');
    switchFindKey(cookies, read.text('on') === 'yes');
    sayDone(cookies, 'settings-saved');
    redirect(303, '/settings#keys');
  },
  ...partActions({
    address: '/settings',
    parts: SETTINGS_PARTS,
    saved: 'settings-saved',
    get: (app) => app.settings.get(),
    savePart: (app, ...part) => app.settings.savePart(...part),
    fields: settingsFields,
    label: settingsLabel,
    choices: settingsChoices,
    usual: defaultSettings,
    read: readSettingsPart,
  }),
} satisfies Actions;

function currencies(): { value: string; label: string }[] {
  const names = new Intl.DisplayNames(language(), { type: 'currency' });
  return Intl.supportedValuesOf('currency').map((code) => ({
    value: code,
    label: `${code} – ${names.of(code)}`,
  }));
}
