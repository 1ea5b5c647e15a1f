/** The colours of the page, for what is drawn on a canvas and cannot see its style sheet. */
export type Ink = {
  readonly text: string;
  readonly soft: string;
  readonly line: string;
  readonly ground: string;
  readonly accent: string;
  readonly wrong: string;
  readonly caution: string;
  readonly note: string;
  readonly font: string;
};

export function inkOf(element: Element): Ink {
  const style = getComputedStyle(element);
  const colour = (name: string) => style.getPropertyValue(name).trim();
  return {
    text: colour('--ink'),
    soft: colour('--ink-soft'),
    line: colour('--line'),
    ground: colour('--label'),
    accent: colour('--accent'),
    wrong: colour('--wrong'),
    caution: colour('--caution'),
    note: colour('--note'),
    font: style.fontFamily,
  };
}
