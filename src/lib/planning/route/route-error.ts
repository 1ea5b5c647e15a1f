import type { RouteFault } from './route-faults.ts';

/** A route that cannot be read or split into days; `presentation/route-words.ts` words it: what, where, and what to do. */
export class RouteError extends Error {
  override readonly name = 'RouteError';

  readonly fault: RouteFault;
  /** Line of the file, or day of the trip from 1, that is at fault. */
  readonly where: { readonly line?: number; readonly day?: number };

  constructor(fault: RouteFault, where: RouteError['where'] = {}) {
    super(JSON.stringify({ ...fault, ...where }));
    this.fault = fault;
    this.where = where;
  }
}
