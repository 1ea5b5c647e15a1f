import { applyAction } from '$app/forms';
import { invalidateAll } from '$app/navigation';
import { tick } from 'svelte';
import type { SubmitFunction } from '@sveltejs/kit';

/** What an action on a page that is changed bit by bit says: what it did, or why it did not. */
export type Answer = { readonly said?: string; readonly refused?: string };

/**
 * For `use:enhance` on the small forms of such a page: every figure follows, and scroll and focus stay where they are.
 * Where the control that had the focus is gone, the focus goes to what holds the form: the nearest element around it with `data-focus-home`.
 *
 * @param told is given what the action says
 */
export function stayInPlace(told: (answer: Answer) => void): SubmitFunction {
  return ({ formElement }) => {
    const home = formElement.closest<HTMLElement>('[data-focus-home]')?.id;
    return async ({ result }) => {
      if (result.type !== 'success' && result.type !== 'failure') return applyAction(result);
      if (result.type === 'success') formElement.reset();
      await invalidateAll();
      told(result.data ?? {});
      await tick();
      const focused = document.activeElement;
      if (home && (!focused || focused === document.body))
        document.getElementById(home)?.focus({ preventScroll: true });
    };
  };
}
