import type { z } from 'zod';

/** What is wrong with one field of an input: where, what, and what would be right. */
export type Problem = { readonly field: string; readonly message: string };

/** `['party', 0, 'name']` → `party[0].name`; the whole input is `(input)`. */
export function fieldPath(path: readonly PropertyKey[]): string {
  const text = path.map((part) => (typeof part === 'number' ? `[${part}]` : `.${String(part)}`)).join('');
  return text.replace(/^\./, '') || '(input)';
}

function plainMessage(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case 'unrecognized_keys':
      return `has the unknown field${issue.keys.length > 1 ? 's' : ''} ${issue.keys.map((key) => `"${key}"`).join(', ')}; check the spelling or remove it`;
    case 'invalid_value':
      return `must be one of: ${issue.values.map(String).join(', ')}${issue.input === undefined ? '' : `; found "${String(issue.input)}"`}`;
    case 'invalid_type':
      return issue.input === undefined
        ? `is missing; ${issue.message.startsWith('Invalid') ? `a ${issue.expected} is needed` : `it ${issue.message}`}`
        : issue.message;
    default:
      return issue.message;
  }
}

/** The problems of a failed `safeParse(input, { reportInput: true })`, one per field, in the order of the fields. */
export function problemsOf(error: z.ZodError): Problem[] {
  return error.issues.map((issue) => ({ field: fieldPath(issue.path), message: plainMessage(issue) }));
}
