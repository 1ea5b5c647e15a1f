import type { z } from 'zod';
import { parseJson } from './parse-json.ts';
import { problemsOf, type Problem } from './presentation/problems.ts';
import { say } from './texts/say.ts';

/** What a JSON file holds; or why it is none, in words that follow a name; or what is wrong with which field. */
export type JsonFile<Value> =
  { readonly value: Value } | { readonly fault: string } | { readonly problems: readonly Problem[] };

/** Reads a JSON file in UTF-8 and checks it against its schema. */
export function readJsonFile<Schema extends z.ZodType>(
  bytes: Uint8Array,
  schema: Schema,
): JsonFile<z.infer<Schema>> {
  if (bytes.length === 0) return { fault: say('the file is empty; a JSON object is needed') };
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return { fault: say('this is no text in UTF-8, so it cannot be JSON') };
  }
  const json = parseJson(text);
  if ('fault' in json) return { fault: say('this is no valid JSON: {fault}', { fault: json.fault }) };
  const checked = schema.safeParse(json.value, { reportInput: true });
  return checked.success ? { value: checked.data } : { problems: problemsOf(checked.error) };
}
