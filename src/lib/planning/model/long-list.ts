import { z } from 'zod';
import { MOST_FAULTS } from './faults.ts';

/** As long as a list has no fault, its elements are looked at in parts of so many. */
const PART = 100;

/**
 * `z.array(element)` for lists that may have very many elements. It ends at the part in which the hundredth problem was found, since each
 * faulty element could have as many problems as it has fields, and none of them would ever be read.
 */
export const ZodLongList: z.core.$constructor<z.ZodArray> = z.core.$constructor(
  'ZodLongList',
  (inst, def) => {
    z.ZodArray.init(inst, def);
    const parse = inst._zod.parse;
    inst._zod.parse = (payload, context) => {
      const { value } = payload;
      const most =
        def.checks?.map(({ _zod }) => (_zod.def as { maximum?: number }).maximum ?? Infinity) ?? [];
      if (!Array.isArray(value) || value.length <= PART || value.length > Math.min(...most))
        return parse(payload, context);
      const read: unknown[] = [];
      for (let start = 0; start < value.length && payload.issues.length < MOST_FAULTS; start += PART) {
        const part = parse({ value: value.slice(start, start + PART), issues: [] }, context);
        if (part instanceof Promise) throw new z.core.$ZodAsyncError();
        for (const element of part.value as unknown[]) read.push(element);
        for (const issue of part.issues)
          payload.issues.push({
            ...issue,
            path: issue.path?.map((step, depth) => (depth === 0 ? Number(step) + start : step)),
          });
      }
      payload.value = read;
      return payload;
    };
  },
);

/** @param most how many elements are taken; more are refused before any is looked at */
export const longList = <Element extends z.ZodType>(
  element: Element,
  most: number,
  message: string,
): z.ZodArray<Element> =>
  (new ZodLongList({ type: 'array', element }) as z.ZodArray<Element>).max(most, message);
