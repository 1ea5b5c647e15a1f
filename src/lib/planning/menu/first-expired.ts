import { layOldestFirst } from './lay-by-expiry.ts';
import { buildMenuModel } from './menu-model.ts';
import type { MenuPlanner } from './menu-problem.ts';
import { fromModel } from './place-menu.ts';

/** First expired, first out: the plain planner, and the one that is fallen back on. It lays tables by the same rules as the search. */
export const firstExpired: MenuPlanner = {
  name: 'first expired, first out',
  choose(problem) {
    const model = buildMenuModel(problem);
    return fromModel(model, layOldestFirst(model), (at) =>
      'slot' in at ? { code: 'oldest' } : { code: 'fills the day' },
    );
  },
};
