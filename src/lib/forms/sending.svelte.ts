import { applyAction, enhance as enhanceForm } from '$app/forms';
import type { ActionResult, SubmitFunction } from '@sveltejs/kit';
import { say } from '$lib/texts/say';

/** What is said of a form that could not be sent; `undefined` where there is nothing to say. */
class Unsent {
  message: string | undefined = $state();
}
export const unsent = new Unsent();

/** That many asked at once, or that nobody answered, is over in a moment, and no reason to put a page of an error in the place of what was typed. */
const isOverSoon = (result: ActionResult): boolean =>
  result.type === 'error' && (result.status === undefined || result.status === 503);

/** SvelteKit's `use:enhance`, which loses no form where the program is busy or cannot be reached: the page stays, and says so. */
export function enhance(form: HTMLFormElement, submit: SubmitFunction = () => undefined) {
  return enhanceForm(form, async (input) => {
    const after = await submit(input);
    return async (options) => {
      const result = options.result as ActionResult;
      unsent.message = undefined;
      if (!isOverSoon(result)) return after ? after({ ...options, result }) : options.update();
      const told = result.type === 'error' ? (result.error as { message?: unknown } | undefined) : undefined;
      unsent.message =
        result.type === 'error' && result.status === 503 && typeof told?.message === 'string'
          ? told.message
          : say('Ridgelarder could not be reached. Nothing you typed is lost. Try again in a moment.');
      // As a failure, so that what waits for an answer stops waiting, and the page stays.
      const failure = { type: 'failure', status: 503 } as const;
      const stay = () => applyAction(failure);
      return after ? after({ ...options, result: failure, update: stay }) : stay();
    };
  });
}
