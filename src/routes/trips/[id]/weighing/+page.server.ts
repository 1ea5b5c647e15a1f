import { offerUndo } from '$lib/forms/done.ts';
import { FormReader } from '$lib/forms/read-form.ts';
import { gapShare } from '$lib/menu-search/find-menu.ts';
import { menuFigures } from '$lib/menu-search/menu-figures.ts';
import { sameMenu } from '$lib/planning/optimiser/other-menus.ts';
import { CHOICE_WORDS } from '$lib/presentation/code-words.ts';
import {
  compareMenus,
  givenOf,
  obstacleOf,
  searchBetter,
  standingOfStored,
  takeChoice,
} from '$lib/server/plan-meals.ts';
import { plannedForPage } from '$lib/server/plan-stored-trip.ts';
import { toFailure, toHttpError } from '$lib/server/to-http-error.ts';
import { say } from '$lib/texts/say.ts';
import {
  figureRows,
  gapInWords,
  oneMoreRows,
  relaxedInWords,
  searchInWords,
  shownPoints,
  shownProgress,
  termRows,
  wishesInWords,
} from '$lib/trip-views/weighing.ts';
import { pointsAssumptions } from '$lib/reasons/plan.ts';
import type { Actions, PageServerLoad, RequestEvent } from './$types';

export const load: PageServerLoad = async ({ locals, params }) => {
  const { app } = locals;
  const planned = await plannedForPage(locals, params.id);
  const { plan, settings } = planned;
  const { unitSystem, currency } = settings;
  const standing = standingOfStored(app, planned);
  const { problem, model, menu, score, broken } = standing;
  const known = app.menus.known(params.id, givenOf(planned));
  const bound = known?.problem === problem && broken.length === 0 ? known.bound : undefined;
  const compared = known?.problem === problem ? known.compared : undefined;
  const choices = compared?.choices ?? [];
  const now = menuFigures(plan, score.points);
  const running = await app.menus.running(params.id).catch(toHttpError);
  return {
    obstacle: obstacleOf(planned),
    running: running && shownProgress(running),
    reasons: { points: pointsAssumptions() },
    points: shownPoints(score.points),
    gap: gapInWords(bound, gapShare(score.points, bound)),
    firstExpired: shownPoints(standing.firstExpiredPoints),
    isByHand: broken.length > 0,
    terms: termRows(score, settings, unitSystem),
    menus: [
      { name: 'now', label: say('as it is now'), isNow: true },
      ...choices.map(({ name, menu: other }) => ({
        name,
        label: say(CHOICE_WORDS[name]),
        isNow: sameMenu(other, menu),
      })),
    ],
    figures: figureRows([now, ...choices.map(({ figures }) => figures)], unitSystem, currency),
    /** Only what was worked out from this very menu. */
    helps:
      compared && sameMenu(compared.from, menu)
        ? {
            oneMore: oneMoreRows(model, compared.oneMore),
            relaxed: relaxedInWords(compared.relaxed),
            wishes: wishesInWords(now, choices, unitSystem),
          }
        : undefined,
  };
};

export const actions: Actions = {
  search: async (event) => {
    const read = new FormReader(await event.request.formData(), 'metric');
    const effort = read.text('effort') === 'thorough' ? 'thorough' : 'quick';
    return answer(event, async ({ locals, params, cookies }) => {
      const searched = await searchBetter(locals.app, params.id, effort);
      if (searched.undo !== undefined) offerUndo(cookies, searched.undo);
      return searchInWords(searched);
    });
  },
  stop: (event) =>
    answer(event, async ({ locals, params }) =>
      (await locals.app.menus.stop(params.id))
        ? say('The search is being stopped; the best so far is taken.')
        : say('No search is running any more.'),
    ),
  compare: (event) =>
    answer(event, async ({ locals, params }) => {
      await compareMenus(locals.app, params.id);
      return say('Compared. The other menus are below.');
    }),
  take: async (event) => {
    const read = new FormReader(await event.request.formData(), 'metric');
    return answer(event, async ({ locals, params, cookies }) => {
      const { name, undo } = await takeChoice(locals.app, params.id, read.text('menu'));
      offerUndo(cookies, undo);
      return say('Now using the menu "{menu}". Locked meals did not change.', {
        menu: say(CHOICE_WORDS[name]),
      });
    });
  },
};

async function answer(event: RequestEvent, work: (event: RequestEvent) => Promise<string>) {
  try {
    return { said: await work(event) };
  } catch (caught) {
    return toFailure(event, caught, (refused) => ({ refused }));
  }
}
