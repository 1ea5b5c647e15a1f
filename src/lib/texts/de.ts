import type { Catalog } from './say.ts';
import app from './de/app.json' with { type: 'json' };
import csv from './de/csv.json' with { type: 'json' };
import drying from './de/drying.json' with { type: 'json' };
import foods from './de/foods.json' with { type: 'json' };
import kitchen from './de/kitchen.json' with { type: 'json' };
import kitchenPages from './de/kitchen-pages.json' with { type: 'json' };
import menu from './de/menu.json' with { type: 'json' };
import model from './de/model.json' with { type: 'json' };
import notices from './de/notices.json' with { type: 'json' };
import offline from './de/offline.json' with { type: 'json' };
import planning from './de/planning.json' with { type: 'json' };
import provisions from './de/provisions.json' with { type: 'json' };
import reasons from './de/reasons.json' with { type: 'json' };
import route from './de/route.json' with { type: 'json' };
import server from './de/server.json' with { type: 'json' };
import settings from './de/settings.json' with { type: 'json' };
import shelf from './de/shelf.json' with { type: 'json' };
import shelfPages from './de/shelf-pages.json' with { type: 'json' };
import tripForms from './de/trip-forms.json' with { type: 'json' };
import tripPages from './de/trip-pages.json' with { type: 'json' };
import tripViews from './de/trip-views.json' with { type: 'json' };
import trips from './de/trips.json' with { type: 'json' };

/** All German texts. What stands in several rooms has its translation in one of them. */
export const german: Catalog = {
  ...app,
  ...csv,
  ...drying,
  ...foods,
  ...kitchen,
  ...kitchenPages,
  ...menu,
  ...model,
  ...notices,
  ...offline,
  ...planning,
  ...provisions,
  ...reasons,
  ...route,
  ...server,
  ...settings,
  ...shelf,
  ...shelfPages,
  ...tripForms,
  ...tripPages,
  ...tripViews,
  ...trips,
};
