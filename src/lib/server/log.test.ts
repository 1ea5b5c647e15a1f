import { afterEach, expect, it, vi } from 'vitest';
import { logged, logKind, logLine } from './log.ts';

const request = {
  time: '2026-07-04T08:00:00.000Z',
  method: 'GET',
  route: '/shelf/[code]',
  status: 200,
  durationMs: 4.2,
};
const statusOf = (thrown: unknown) => (thrown as { status: number }).status;
afterEach(() => {
  vi.unstubAllEnvs();
  vi.restoreAllMocks();
});

it('writes one line for a request, as JSON or as text, or none', () => {
  expect(JSON.parse(logLine(request, 'json') ?? '')).toEqual(request);
  expect(logLine(request, 'text')).toBe('2026-07-04T08:00:00.000Z 200 GET /shelf/[code] 4.2 ms');
  expect(logLine({ ...request, route: null }, 'text')).toBe('2026-07-04T08:00:00.000Z 200 GET - 4.2 ms');
  expect([logLine(request, 'off'), logKind('loud'), logKind('')]).toEqual([undefined, undefined, undefined]);
});

it('says what became of a request, also of one that was refused', async () => {
  vi.stubEnv('RIDGELARDER_LOG', 'json');
  const written: string[] = [];
  vi.spyOn(process.stdout, 'write').mockImplementation((line) => Boolean(written.push(String(line))));
  await logged({ method: 'GET', route: '/' }, async () => new Response(null, { status: 204 }), statusOf);
  const refused = Object.assign(new Error(), { status: 403 });
  await expect(logged({ method: 'POST', route: null }, () => Promise.reject(refused), statusOf)).rejects.toBe(
    refused,
  );
  expect(written.map((line) => JSON.parse(line) as unknown)).toEqual([
    { time: expect.any(String), method: 'GET', route: '/', status: 204, durationMs: expect.any(Number) },
    { time: expect.any(String), method: 'POST', route: null, status: 403, durationMs: expect.any(Number) },
  ]);
});
