import { createReadStream } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { z } from 'zod';
import { readFoodsCsv, type FoodsCsv } from '../../foods/read-foods-csv.ts';
import { parseJson } from '../../parse-json.ts';
import { faultsOf, fieldPath, MOST_FAULTS, type FieldFault } from '../../planning/model/faults.ts';
import { doubtsOf } from '../../planning/model/plausibility.ts';
import { Stock } from '../../planning/model/pouch-lot.ts';
import { Settings } from '../../planning/model/settings.ts';
import { TrailNotesRequest, type TrailNote } from '../../planning/model/trail-note.ts';
import type { TripPlan } from '../../planning/model/trip-plan.ts';
import { Trip } from '../../planning/model/trip.ts';
import { EFFORTS, type Effort } from '../../planning/optimiser/search-menu.ts';
import { fillShortfall } from '../../planning/filling/fill-shortfall.ts';
import type { FillPreference } from '../../planning/model/words.ts';
import { planTrip } from '../../planning/plan-trip.ts';
import type { Offer } from '../../planning/shortfall/offers.ts';
import { leftByAll } from '../../planning/season/plan-season.ts';
import { routeFromGpx, type RouteFromGpx } from '../../planning/route/route-from-gpx.ts';
import { nameOnRoute } from '../../presentation/route-words.ts';
import { wordedPlan } from '../../presentation/worded-plan.ts';
import { readJsonFile, type JsonFile } from '../../read-json-file.ts';
import type { DecimalMark } from '../../shelf-csv/read-cell.ts';
import { openTable } from '../../workbook/open-table.ts';
import { stage } from '../staged.ts';
import { lookThroughCopy, type CopyToLook } from '../backups/look-through-copy.ts';

/** What was sent: itself, or the file that it was taken to where it is large. */
export type Source = Uint8Array | { readonly path: string; readonly bytes: number };

/** What can be done apart from the process that answers requests. All of it is plain data, so that it can be handed over. */
export type Task =
  | { readonly kind: 'plan'; readonly trip: Trip; readonly stock: Stock; readonly settings: Settings }
  | {
      readonly kind: 'fill';
      readonly trip: Trip;
      readonly stock: Stock;
      readonly settings: Settings;
      readonly preference: FillPreference;
      readonly recipes: readonly Offer[];
    }
  | { readonly kind: 'plan request'; readonly source: Source; readonly own?: Own }
  | { readonly kind: 'trip file'; readonly source: Source }
  | { readonly kind: 'trail notes'; readonly source: Source }
  | { readonly kind: 'GPX'; readonly source: Source; readonly pick: number | undefined }
  | { readonly kind: 'foods'; readonly source: Source; readonly decimalMark: DecimalMark | undefined }
  /** An uploaded table, whose rows are kept in its place. */
  | { readonly kind: 'table'; readonly source: Exclude<Source, Uint8Array> }
  | ({ readonly kind: 'copy' } & CopyToLook);

/** What a request for a plan may leave out, as it is kept here. */
export type Own = { readonly stock: Stock; readonly settings: Settings };

export type Refused = { readonly faults: readonly FieldFault[] };
export type PlanAnswer =
  | Refused
  | { readonly lacks: 'own' }
  | { readonly given: { readonly trip: Trip } & Own; readonly search: Effort }
  /** The plan as JSON: the process that answers would else hold everybody up with writing it. */
  | { readonly json: Uint8Array<ArrayBuffer> };

export type Outcome<Kind extends Task['kind']> = {
  plan: TripPlan;
  fill: Trip;
  'plan request': PlanAnswer;
  'trip file': JsonFile<Trip>;
  'trail notes': Refused | { readonly notes: readonly TrailNote[] };
  GPX: RouteFromGpx;
  foods: FoodsCsv;
  table: undefined;
  copy: undefined;
}[Kind];

/** @returns the stock that comes with a task */
export const stockOf = (task: Task): Stock =>
  'stock' in task ? task.stock : 'own' in task ? (task.own?.stock ?? []) : [];

/** @returns a task with another stock, where it has one */
export function withStock(task: Task, stock: Stock): Task {
  if ('stock' in task) return { ...task, stock };
  return 'own' in task && task.own ? { ...task, own: { ...task.own, stock } } : task;
}

/** @throws UserError, RouteError, UnreadableFile as what does it */
export async function doTask(task: Task): Promise<Outcome<Task['kind']>> {
  switch (task.kind) {
    case 'plan':
      return planTrip(task.trip, task.stock, task.settings);
    case 'fill':
      return fillShortfall(task.trip, task.stock, task.settings, task.preference, task.recipes);
    case 'plan request':
      return answerPlanRequest(await bytesOf(task.source), task.own);
    case 'trip file':
      return readJsonFile(await bytesOf(task.source), Trip);
    case 'trail notes': {
      const read = readJson(await bytesOf(task.source), TrailNotesRequest);
      return 'faults' in read ? read : { notes: read.value.notes };
    }
    case 'GPX':
      return routeFromGpx(new TextDecoder().decode(await bytesOf(task.source)), {
        pick: task.pick,
        nameOf: nameOnRoute,
      });
    case 'foods':
      return readFoodsCsv(await bytesOf(task.source), task.decimalMark);
    case 'table': {
      const { path } = task.source;
      await stage(path, await openTable(() => createReadStream(path)));
      return undefined;
    }
    case 'copy':
      await lookThroughCopy(task);
      return undefined;
  }
}

const bytesOf = async (source: Source): Promise<Uint8Array> =>
  source instanceof Uint8Array ? source : readFile(source.path);

const PlanRequest = z.strictObject({
  trip: Trip,
  before: z.array(Trip).max(20).optional(),
  stock: Stock.optional(),
  settings: Settings.optional(),
  search: z.enum(['none', ...EFFORTS]).default('none'),
});

function answerPlanRequest(bytes: Uint8Array, own: Own | undefined): PlanAnswer {
  const read = readJson(bytes, PlanRequest);
  if ('faults' in read) return read;
  const { trip, before = [], search, ...stated } = read.value;
  const impossible = (stated.stock ?? [])
    .flatMap((lot, index) =>
      doubtsOf(lot)
        .filter(({ severity }) => severity === 'refuse')
        .map(({ severity: _refuse, ...fault }) => ({
          ...fault,
          field: fieldPath(['stock', index, fault.field]),
        })),
    )
    .slice(0, MOST_FAULTS);
  if (impossible.length > 0) return { faults: impossible };
  const shelf = stated.stock ?? own?.stock;
  const settings = stated.settings ?? own?.settings;
  if (!shelf || !settings) return { lacks: 'own' };
  const stock = leftByAll(before, shelf, (other, left) => planTrip(other, left, settings));
  if (search !== 'none') return { given: { trip, stock, settings }, search };
  const plan = wordedPlan(planTrip(trip, stock, settings), settings.unitSystem);
  return { json: new TextEncoder().encode(JSON.stringify(plan)) };
}

function readJson<Schema extends z.ZodType>(
  bytes: Uint8Array,
  schema: Schema,
): Refused | { readonly value: z.infer<Schema> } {
  const parsed = parseJson(new TextDecoder().decode(bytes));
  if ('fault' in parsed)
    return { faults: [{ field: fieldPath([]), code: 'not-json', params: { fault: parsed.fault } }] };
  const checked = schema.safeParse(parsed.value, { reportInput: true });
  return checked.success ? { value: checked.data } : { faults: faultsOf(checked.error) };
}
