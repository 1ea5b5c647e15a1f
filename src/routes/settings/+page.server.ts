import { error, fail, redirect } from '@sveltejs/kit';
import { sayDone } from '$lib/forms/done.ts';
import { FormReader, type RefusedForm } from '$lib/forms/read-form.ts';
import {
  isSettingsPart,
  readSettingsPart,
  SETTINGS_PARTS,
  settingsFields,
  type SettingsPart,
} from '$lib/forms/settings-form.ts';
import { defaultSettings, type Settings } from '$lib/planning/model/settings.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals }) => {
  const settings = await locals.app.settings.get();
  return {
    fields: settingsFields(settings),
    usual: settingsFields({ ...defaultSettings(), unitSystem: settings.unitSystem }),
    currencies: currencies(),
  };
};

type Refusal = RefusedForm & { readonly of: SettingsPart };

export const actions: Actions = {
  save: async ({ request, locals: { app }, cookies }) => {
    const current = await app.settings.get();
    const read = new FormReader(await request.formData(), current.unitSystem);
    const part = partOf(read);
    const settings = readSettingsPart(read, part, current);
    if (!settings) return fail<Refusal>(422, { ...read.refused(), of: part });
    await app.settings.save(settings);
    sayDone(cookies, 'settings-saved');
    redirect(303, `/settings#${part}`);
  },

  reset: async ({ request, locals: { app }, cookies }) => {
    const current = await app.settings.get();
    const part = partOf(new FormReader(await request.formData(), current.unitSystem));
    const usual = defaultSettings();
    const back: Partial<Settings> = Object.fromEntries(
      SETTINGS_PARTS[part].map((name) => [name, usual[name]]),
    );
    await app.settings.save({ ...current, ...back });
    sayDone(cookies, 'settings-reset');
    redirect(303, `/settings#${part}`);
  },
};

function partOf(read: FormReader): SettingsPart {
  const part = read.text('part');
  if (!isSettingsPart(part)) error(400, 'This form names no part of the settings. Open the settings again.');
  return part;
}

function currencies(): { value: string; label: string }[] {
  const names = new Intl.DisplayNames('en', { type: 'currency' });
  return Intl.supportedValuesOf('currency').map((code) => ({
    value: code,
    label: `${code} – ${names.of(code)}`,
  }));
}
