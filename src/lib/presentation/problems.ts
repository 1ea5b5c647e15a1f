import type { z } from 'zod';
import { faultsOf, type FieldFault } from '../planning/model/faults.ts';
import { faultText } from './fault-words.ts';

/** What is wrong with one field of an input: where, what, and what would be right. */
export type Problem = {
  readonly field: string;
  readonly message: string;
  /** Nothing is there; a form says so of an empty field, and no more. */
  readonly missing?: true;
};

/** The problems of a failed `safeParse(input, { reportInput: true })` in the language around, in the order of the fields, at most `MOST_FAULTS`. */
export const problemsOf = (error: z.ZodError): Problem[] =>
  faultsOf(error).map((fault) => ({
    field: fault.field,
    message: faultText(fault),
    ...(fault.missing && { missing: true }),
  }));

/** A fault as it leaves the program: its code beside its text. */
export const wordedFault = (fault: FieldFault) => ({
  field: fault.field,
  code: fault.code,
  params: fault.params,
  message: faultText(fault),
});
