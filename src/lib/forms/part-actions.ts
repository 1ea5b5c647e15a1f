import { error, fail, redirect, type Cookies } from '@sveltejs/kit';
import type { Settings } from '$lib/planning/model/settings.ts';
import type { App } from '$lib/server/app.ts';
import { UserError } from '$lib/server/errors.ts';
import { partVersion } from '$lib/server/settings-repository.ts';
import { toHttpError } from '$lib/server/to-http-error.ts';
import { say } from '$lib/texts/say.ts';
import { sayDone, type Done } from './done.ts';
import { differences, type FieldWords } from './differences.ts';
import type { Difference } from './fields.ts';
import { FormReader, type Entered, type RefusedForm } from './read-form.ts';

/** A page whose parts are saved, and brought back to the usual values, each by itself. */
type PageOfParts<Whole extends object, Part extends string> = {
  readonly address: string;
  /** What belongs to each part. */
  readonly parts: Readonly<Record<Part, readonly (keyof Whole)[]>>;
  readonly saved: Done;
  get(app: App): Promise<Whole>;
  /** Saves the named fields, where `partVersion` still says the same of them. @throws UserError `StaleVersion` */
  savePart(app: App, names: readonly (keyof Whole)[], version: string, whole: Whole): Promise<void>;
  /** What the forms are filled with. */
  fields(whole: Whole, shown: Settings): Entered;
  /** The label of a field. */
  label(field: string): string;
  /** What the choices of a field are called. */
  choices: FieldWords['choices'];
  usual(): Whole;
  /** @returns the whole with the part as entered, or `undefined` where `read.problems` says what has to be mended */
  read(read: FormReader, part: Part, current: Whole, shown: Settings): Whole | undefined;
};

type ActionEvent = {
  readonly request: Request;
  readonly locals: { readonly app: App };
  readonly cookies: Cookies;
};

/** What an action hands back: of which part, and what was saved meanwhile. */
export type RefusedPart<Part extends string> = RefusedForm & {
  readonly of: Part;
  readonly newer?: readonly Difference[];
};

/** @returns the version of each part, for its forms to send along */
export const versionsOf = <Whole extends object, Part extends string>(
  parts: Readonly<Record<Part, readonly (keyof Whole)[]>>,
  whole: Whole,
): Record<Part, string> =>
  Object.fromEntries(
    Object.entries<readonly (keyof Whole)[]>(parts).map(([part, names]) => [part, partVersion(whole, names)]),
  ) as Record<Part, string>;

/** @returns the actions `save` and `reset` of such a page; its forms name their part in the field `part`. */
export function partActions<Whole extends object, Part extends string>(page: PageOfParts<Whole, Part>) {
  const partOf = (read: FormReader): Part => {
    const part = read.text('part');
    if (part === undefined || !Object.hasOwn(page.parts, part))
      error(400, say('This page is out of date. Reload it and try again.'));
    return part as Part;
  };
  /** @returns what is handed back where somebody else saved the part meanwhile */
  const newerThan = async (app: App, read: FormReader, part: Part, entered: Entered) => {
    const theirs = page.fields(await page.get(app), await app.settings.get());
    const isOfPart = (field: string) => page.parts[part].some((name) => name === /^\w+/.exec(field)?.[0]);
    const newer = differences(entered, theirs, {
      label: (field) => (isOfPart(field) ? page.label(field) : undefined),
      choices: page.choices,
    });
    return fail<RefusedPart<Part>>(409, { ...read.refused(), entered, of: part, newer });
  };
  const isStale = (caught: unknown) => caught instanceof UserError && caught.code === 'StaleVersion';

  return {
    save: async ({ request, locals: { app }, cookies }: ActionEvent) => {
      const shown = await app.settings.get();
      const read = new FormReader(await request.formData(), shown.unitSystem);
      const part = partOf(read);
      const whole = page.read(read, part, await page.get(app), shown);
      if (!whole) return fail<RefusedPart<Part>>(422, { ...read.refused(), of: part });
      try {
        await page.savePart(app, page.parts[part], read.text('version') ?? '', whole);
      } catch (caught) {
        if (isStale(caught)) return newerThan(app, read, part, read.entered);
        return toHttpError(caught);
      }
      sayDone(cookies, page.saved);
      redirect(303, `${page.address}#${part}`);
    },

    reset: async ({ request, locals: { app }, cookies }: ActionEvent) => {
      const read = new FormReader(await request.formData(), 'metric');
      const part = partOf(read);
      const usual = page.usual();
      try {
        await page.savePart(app, page.parts[part], read.text('version') ?? '', usual);
      } catch (caught) {
        if (!isStale(caught)) return toHttpError(caught);
        return newerThan(app, read, part, page.fields(usual, await app.settings.get()));
      }
      sayDone(cookies, 'settings-reset');
      redirect(303, `${page.address}#${part}`);
    },
  };
}
