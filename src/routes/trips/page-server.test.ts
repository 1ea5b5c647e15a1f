import { expect, it } from 'vitest';
import { addDays } from '$lib/planning/model/calendar';
import { madeUpTrip, openTestApp } from '$lib/server/test-data';
import type { PageData } from './$types';
import { load } from './+page.server';

it('plans the next trips that are ahead, and no other', async () => {
  const app = await openTestApp();
  const starts = Array.from({ length: 10 }, (_, index) => addDays(app.today(), 7 * (10 - index)));
  const over = addDays(app.today(), -30);
  for (const startDate of [...starts, over])
    await app.trips.createTrip(madeUpTrip({ name: startDate, startDate }));
  const shown = (await load({ locals: { app } } as never)) as PageData;
  const planned = shown.trips.filter(({ verdict }) => verdict !== undefined).map(({ name }) => name);
  expect(planned.sort()).toEqual(starts.sort().slice(0, 8));
  expect(shown.trips.filter(({ isOver }) => isOver).map(({ name }) => name)).toEqual([over]);
  await app.close();
});
