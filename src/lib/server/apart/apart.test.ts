import { afterEach, describe, expect, it, vi } from 'vitest';
import { exampleLot, exampleTrip } from '../../../../tests/support/examples.ts';
import { defaultSettings } from '../../planning/model/settings.ts';
import { RouteError } from '../../planning/route/route-error.ts';
import { UnreadableFile } from '../../shelf-csv/text-encoding.ts';
import { speaking } from '../language-of-request.ts';
import { expectUserError } from '../test-data.ts';
import { Apart, type Limits } from './apart.ts';

// A process takes its time to begin where a machine is crowded.
vi.setConfig({ testTimeout: 120_000 });

let apart: Apart;
const open = (limits: Partial<Limits> = {}) => (apart = new Apart(limits));
afterEach(() => apart.close());

const bytes = (text: string) => new TextEncoder().encode(text);
/** Larger than what is read on the spot. */
const padded = (text: string) => bytes(text + ' '.repeat(60_000));
const trip = exampleTrip();
const tripFile = { kind: 'trip file', source: padded(JSON.stringify(trip)) } as const;
const settings = defaultSettings();
/** Forty people for ninety days: takes seconds. */
const long = {
  kind: 'plan',
  trip: exampleTrip({
    dayCount: 90,
    party: Array.from({ length: 40 }, (_, index) => ({ name: `Eater ${index}` })),
  }),
  stock: Array.from({ length: 5000 }, (_, index) => exampleLot({ code: `L${index}`, pouches: 20 })),
  settings,
} as const;

describe('in a process of its own', () => {
  it('is read and said what is read and said here', async () => {
    open();
    const small = { ...tripFile, source: bytes(JSON.stringify(trip)) };
    const here = await apart.do(small);
    expect(here).toEqual({ value: trip });
    expect(await apart.do(tripFile)).toEqual(here);
    const german = await speaking('de', () => apart.do({ kind: 'trip file', source: padded('{"name":5}') }));
    expect(JSON.stringify(german)).toContain('muss ein Text sein');
  });

  it('fails as it fails here', async () => {
    open();
    const gpx = apart.do({ kind: 'GPX', source: padded('<kml/>'), pick: undefined });
    await expect(gpx).rejects.toBeInstanceOf(RouteError);
    await expect(gpx).rejects.toThrow(/"code":"not-gpx","element":"kml","line":1/);
    const foods = apart.do({ kind: 'foods', source: padded('a,b\n1,2\n'), decimalMark: undefined });
    await expect(foods).rejects.toBeInstanceOf(UnreadableFile);
    expect(await apart.do(tripFile)).toEqual({ value: trip });
  });

  it('ends when nobody waits for it any more, and the next one begins', async () => {
    open({ processes: 1 });
    const gone = [new AbortController(), new AbortController()] as const;
    const left = gone.map(({ signal }) => apart.do(long, { signal }));
    const next = apart.do(tripFile);
    for (const each of gone) each.abort(new Error('gone'));
    for (const each of left) await expect(each).rejects.toThrow('gone');
    expect(await next).toEqual({ value: trip });
  });

  it('is ended where it takes too long', async () => {
    open({ taskMs: 1 });
    await expectUserError(apart.do(long), 'Refused', 'longer than 0 s');
  });

  it('waits behind what the owner asks for, and is told to come again where many wait', async () => {
    open({ processes: 1, waiting: 2 });
    const order: string[] = [];
    const asked = (name: string, first = false) => apart.do(tripFile, { first }).then(() => order.push(name));
    const begun = asked('begun');
    const waiting = [asked('one'), asked('two')];
    await expectUserError(asked('three'), 'Busy', 'Too many plans');
    await Promise.all([begun, ...waiting, asked('owner', true), asked('owner again', true)]);
    expect(order).toEqual(['begun', 'owner', 'owner again', 'one', 'two']);
  });

  it('keeps a process for the owner', async () => {
    open({ processes: 2 });
    const left = new AbortController();
    const others = apart.do(long, { signal: left.signal });
    expect(await apart.do(tripFile, { first: true })).toEqual({ value: trip });
    left.abort(new Error('gone'));
    await expect(others).rejects.toThrow('gone');
  });
});

describe('a request for a plan', () => {
  it('names at most a hundred problems of a stock, without looking at the rest', async () => {
    open();
    const stock = Array.from({ length: 60_000 }, () => ({ zz: 1 }));
    const answer = await apart.do({
      kind: 'plan request',
      source: bytes(JSON.stringify({ trip: {}, stock })),
    });
    expect(answer).toHaveProperty('faults.length', 100);
    expect(JSON.stringify(answer).length).toBeLessThan(20_000);
  });

  it('says which fields are wrong, wherever they stand in a long stock', async () => {
    open();
    const stock = Array.from({ length: 250 }, (_, index) => exampleLot({ code: `L${index}` }));
    const wrong = stock.with(249, { ...exampleLot({ code: 'L249' }), pouches: -1 });
    const answer = await apart.do({
      kind: 'plan request',
      source: bytes(JSON.stringify({ trip, stock: wrong })),
    });
    expect(answer).toEqual({
      faults: [{ field: 'stock[249].pouches', code: 'negative', params: {} }],
    });
  });

  it('tells what it lacks, and is a plan with it', async () => {
    open();
    const request = { kind: 'plan request', source: bytes(JSON.stringify({ trip })) } as const;
    expect(await apart.do(request)).toEqual({ lacks: 'own' });
    const answer = await apart.do({ ...request, own: { stock: [exampleLot()], settings } });
    expect('json' in answer && JSON.parse(new TextDecoder().decode(answer.json))).toMatchObject({
      tripName: trip.name,
    });
  });
});
