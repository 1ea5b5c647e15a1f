/*
 * A spreadsheet runs a cell that begins with = + - @ as a formula, also behind blanks or quotation marks; tab and carriage
 * return can split it off. An apostrophe in front makes it text (OWASP, "CSV injection"). The apostrophe is part of the rule
 * itself, so that a text which already begins with one comes back as it was.
 */
const RUNS = /^['"\s]*[=+\-@＝＋－＠\t\r]/u;
const PLAIN_NUMBER = /^[+-]?\d[\d.,]*$/;

const wouldRun = (text: string): boolean => RUNS.test(text) && !PLAIN_NUMBER.test(text);

/** @returns the text as a spreadsheet may show it without running it. */
export function neutralise(text: string): string {
  return wouldRun(text) ? `'${text}` : text;
}

/** @returns the text that `neutralise` made this of; any other text as it is. */
export function restore(text: string): string {
  return text.startsWith("'") && wouldRun(text.slice(1)) ? text.slice(1) : text;
}
