import type { Locator, Page } from 'playwright';
import { expect } from 'vitest';
import { atRest } from '../../src/tooling/browse.ts';

/** So many presses of a key may lead from one control to another; more, and nobody would go on. */
const MOST_PRESSES = 250;

/** Where the focus is, as seen in the page. */
type Stop = {
  readonly isWanted: boolean;
  /** Whether what is wanted is still on the page. */
  readonly isThere: boolean;
  readonly troubles: readonly string[];
};

/**
 * Looks where the focus is and what is wrong with how it shows; run in the page. WCAG 2.2: it is visible (2.4.7), not hidden behind anything (2.4.11), and the
 * ring stands out from what is around it by 3 : 1 (1.4.11).
 */
function lookAtFocus(wanted: Element | null): Stop {
  const element = document.activeElement;
  const isThere = wanted?.isConnected ?? false;
  if (!(element instanceof HTMLElement) || element === document.body)
    return { isWanted: false, isThere, troubles: [] };
  const troubles: string[] = [];

  const { outlineStyle, outlineColor, outlineWidth } = getComputedStyle(element);
  const others = document.querySelectorAll(':any-link, button, input, select, textarea, summary, [tabindex]');
  for (const other of others)
    if (other !== element && getComputedStyle(other).outlineStyle !== 'none')
      troubles.push(`is not the only one with a ring, as there is ${other.outerHTML.slice(0, 80)}`);

  const channels = (colour: string) => (colour.match(/[\d.]+/g) ?? []).map(Number);
  const luminance = (colour: string) => {
    const [r = 0, g = 0, b = 0] = channels(colour)
      .slice(0, 3)
      .map((of255) => of255 / 255)
      .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  // The ring stands outside the control, on what the control lies on.
  let ground = element.parentElement;
  while (ground && channels(getComputedStyle(ground).backgroundColor)[3] === 0) ground = ground.parentElement;
  const around = getComputedStyle(ground ?? document.body).backgroundColor;
  const [dark = 0, light = 0] = [luminance(outlineColor), luminance(around)].sort((a, b) => a - b);
  const contrast = (light + 0.05) / (dark + 0.05);
  if (outlineStyle === 'none' || parseFloat(outlineWidth) < 2 || contrast < 3)
    troubles.push(`has a ring ${outlineStyle} ${outlineWidth} ${outlineColor} on ${around}, ${contrast} : 1`);

  // Of a long text only the line with the caret is brought into view, and of a wide table what fits.
  const box = element.getClientRects()[0] ?? new DOMRect();
  const [left, right] = [Math.max(box.left, 0), Math.min(box.right, innerWidth)];
  const [top, bottom] = [Math.max(box.top, 0), Math.min(box.bottom, innerHeight)];
  const inView = (Math.max(right - left, 0) * Math.max(bottom - top, 0)) / (box.width * box.height);
  if (!(inView > 0.5))
    troubles.push(`is out of view: ${JSON.stringify(box)} in ${innerWidth} × ${innerHeight}`);
  for (const across of [0.1, 0.5, 0.9])
    for (const down of [0.1, 0.5, 0.9]) {
      const met = document.elementFromPoint(left + across * (right - left), top + down * (bottom - top));
      const isMiddle = across === 0.5 && down === 0.5; // between its rounded corners is what it lies on
      if (element.contains(met) || met?.closest('label')?.contains(element)) continue;
      if (isMiddle || !met?.contains(element)) troubles.push(`is covered by ${met?.outerHTML.slice(0, 80)}`);
    }
  return {
    isWanted: element === wanted,
    isThere,
    troubles: troubles.map((trouble) => `${element.outerHTML.slice(0, 120)} ${trouble}`),
  };
}

/** Somebody at a page who has a keyboard and no pointer. */
export type Typist = {
  /** Presses Tab until a control has the focus, and looks at each stop on the way whether the focus shows. */
  to(control: Locator): Promise<void>;
  /** Goes to a control, presses it with Enter, and waits until the page is at rest. */
  press(control: Locator): Promise<void>;
  /** Goes to the button of a form that is sent as without scripts, presses it, and waits for the page that answers. */
  submit(button: Locator): Promise<void>;
  /** Goes to a field and types over what it holds. */
  type(field: Locator, text: string | number): Promise<void>;
  /** Goes to a list and moves down to an option whose words hold a text. */
  choose(list: Locator, option: string): Promise<void>;
  /** Goes to a box and ticks it. */
  tick(box: Locator): Promise<void>;
  /** Whether one of these has the focus. */
  isAt(control: Locator): Promise<boolean>;
};

/** @param page one that is open; it is only ever touched through its keyboard */
export function atKeyboard(page: Page): Typist {
  const { keyboard } = page;
  const isAt = (control: Locator) =>
    control.evaluateAll((elements) => elements.includes(document.activeElement as HTMLElement));

  async function to(control: Locator): Promise<void> {
    let wanted = await control.elementHandle();
    for (let presses = 0; presses < MOST_PRESSES; presses++) {
      const { isWanted, isThere, troubles } = await page.evaluate(lookAtFocus, wanted);
      if (presses > 0) expect(troubles, page.url()).toEqual([]);
      if (isWanted) return;
      if (!isThere) wanted = await control.elementHandle();
      await keyboard.press('Tab');
    }
    throw new Error(`${page.url()}: ${MOST_PRESSES} presses of Tab do not lead to ${control}.`);
  }

  async function press(control: Locator): Promise<void> {
    await to(control);
    await keyboard.press('Enter');
    await atRest(page);
  }

  return {
    to,
    isAt,
    press,
    async submit(button) {
      await Promise.all([page.waitForEvent('load'), press(button)]);
      await atRest(page);
    },
    async type(field, text) {
      await to(field);
      await keyboard.press('ControlOrMeta+A');
      await keyboard.type(`${text}`);
    },
    async choose(list, option) {
      await to(list);
      await keyboard.press('Home');
      const shown = () =>
        list.evaluate((select: HTMLSelectElement) => select.selectedOptions[0]?.label ?? '');
      for (let presses = 0; !(await shown()).includes(option); presses++) {
        if (presses === MOST_PRESSES) throw new Error(`${page.url()}: ${list} has no option "${option}".`);
        await keyboard.press('ArrowDown');
      }
    },
    async tick(box) {
      await to(box);
      await keyboard.press('Space');
      expect(await box.isChecked()).toBe(true);
    },
  };
}
