import { error, fail, redirect, type Cookies } from '@sveltejs/kit';
import type { Settings } from '$lib/planning/model/settings.ts';
import type { App } from '$lib/server/app.ts';
import { say } from '$lib/texts/say.ts';
import { sayDone, type Done } from './done.ts';
import { FormReader, type RefusedForm } from './read-form.ts';

/** A page whose parts are saved, and brought back to the usual values, each by itself. */
type PageOfParts<Whole extends object, Part extends string> = {
  readonly address: string;
  /** What belongs to each part. */
  readonly parts: Readonly<Record<Part, readonly (keyof Whole)[]>>;
  readonly saved: Done;
  get(app: App): Promise<Whole>;
  save(app: App, whole: Whole): Promise<void>;
  usual(): Whole;
  /** @returns the whole with the part as entered, or `undefined` where `read.problems` says what has to be mended */
  read(read: FormReader, part: Part, current: Whole, shown: Settings): Whole | undefined;
};

type ActionEvent = {
  readonly request: Request;
  readonly locals: { readonly app: App };
  readonly cookies: Cookies;
};

/** @returns the actions `save` and `reset` of such a page; its forms name their part in the field `part`. */
export function partActions<Whole extends object, Part extends string>(page: PageOfParts<Whole, Part>) {
  const partOf = (read: FormReader): Part => {
    const part = read.text('part');
    if (part === undefined || !Object.hasOwn(page.parts, part))
      error(400, say('This form does not say which part of the page it is. Open the page again.'));
    return part as Part;
  };
  return {
    save: async ({ request, locals: { app }, cookies }: ActionEvent) => {
      const shown = await app.settings.get();
      const read = new FormReader(await request.formData(), shown.unitSystem);
      const part = partOf(read);
      const whole = page.read(read, part, await page.get(app), shown);
      if (!whole) return fail<RefusedForm & { readonly of: Part }>(422, { ...read.refused(), of: part });
      await page.save(app, whole);
      sayDone(cookies, page.saved);
      redirect(303, `${page.address}#${part}`);
    },

    reset: async ({ request, locals: { app }, cookies }: ActionEvent) => {
      const part = partOf(new FormReader(await request.formData(), 'metric'));
      const usual = page.usual();
      const back = Object.fromEntries(page.parts[part].map((name) => [name, usual[name]]));
      await page.save(app, { ...(await page.get(app)), ...back });
      sayDone(cookies, 'settings-reset');
      redirect(303, `${page.address}#${part}`);
    },
  };
}
