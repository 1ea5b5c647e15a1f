/** A form as a page sends it. */
export type Form = {
  readonly action: string;
  readonly isMultipart: boolean;
  readonly fields: readonly (readonly [string, string])[];
};

const attribute = (tag: string, name: string): string | undefined =>
  new RegExp(`\\s${name}="([^"]*)"`).exec(tag)?.[1];
const plain = (text = ''): string =>
  text
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&amp;', '&');

/** @returns the forms of a page of ours that change something, with what stands in their fields */
export function formsOf(html: string, address: string): Form[] {
  return Array.from(html.matchAll(/<form\b([^>]*)>(.*?)<\/form>/gs), ([, opening = '', inside = '']) => {
    const fields: [string, string][] = [];
    for (const [tag, kind] of inside.matchAll(/<(input|textarea|select|button)\b[^>]*>/g)) {
      const name = attribute(tag, 'name');
      const type = attribute(tag, 'type');
      if (name === undefined) continue;
      if ((type === 'checkbox' || type === 'radio') && !/\schecked\b/.test(tag)) continue;
      fields.push([plain(name), plain(attribute(tag, 'value')) || (kind === 'select' ? 'x' : '')]);
    }
    for (const [, name = '', value = ''] of inside.matchAll(
      /<select\b[^>]*\sname="([^"]*)"[^>]*>.*?<option value="([^"]*)" selected/gs,
    ))
      for (const field of fields) if (field[0] === plain(name)) field[1] = plain(value);
    return {
      action: new URL(plain(attribute(opening, 'action')), `http://x${address}`),
      isPost: /method="post"/i.test(opening),
      isMultipart: opening.includes('multipart'),
      fields,
    };
  })
    .filter(({ isPost }) => isPost)
    .map(({ action, isMultipart, fields }) => ({
      action: action.pathname + action.search,
      isMultipart,
      fields,
    }));
}
