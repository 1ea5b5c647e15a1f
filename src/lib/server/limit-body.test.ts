import { describe, expect, it } from 'vitest';
import { limitBody } from './limit-body.ts';

const sending = (bytes: number, headers: Record<string, string> = {}) =>
  new Request('http://localhost/', { method: 'POST', headers, body: new Uint8Array(bytes).fill(97) });
/** Does not say how much it sends. */
const streaming = (bytes: number, piece = 64_000) => {
  let left = bytes;
  return new Request('http://localhost/', {
    method: 'POST',
    headers: { 'content-type': 'application/x-www-form-urlencoded' },
    duplex: 'half',
    body: new ReadableStream({
      pull(controller) {
        if (left <= 0) return controller.close();
        controller.enqueue(new Uint8Array(Math.min(piece, left)).fill(97));
        left -= piece;
      },
    }),
  });
};
const REFUSED = { status: 413, body: { message: expect.stringMatching(/larger than 1 MB.*Send less/) } };

describe('a body', () => {
  it.each([
    ['stated', sending],
    ['streamed', streaming],
  ])('of a form is refused beyond 1 MB, %s', async (_, send) => {
    expect(await limitBody(send(1_000_000), '/settings').text()).toHaveLength(1_000_000);
    await expect(limitBody(send(1_000_001), '/settings').text()).rejects.toMatchObject(REFUSED);
    await expect(limitBody(streaming(1_000_001), '/settings').formData()).rejects.toMatchObject(REFUSED);
  });

  it('is bounded where a route is added that says nothing of it', async () => {
    await expect(limitBody(sending(1_000_001), '/new/route').text()).rejects.toMatchObject(REFUSED);
    await expect(limitBody(sending(1_000_001), null).text()).rejects.toMatchObject(REFUSED);
  });

  it('with a file is left to its action, and no other one of the same page', async () => {
    const send = (search: string) => limitBody(sending(2_000_000), '/trips/new', search).text();
    expect(await send('?/open')).toHaveLength(2_000_000);
    await expect(send('?/plan')).rejects.toMatchObject(REFUSED);
    await expect(send('')).rejects.toMatchObject(REFUSED);
  });

  it('of a form is refused where it has more fields than any page', async () => {
    const send = (fields: number) => {
      const body = 'a&'.repeat(fields);
      return limitBody(new Request('http://localhost/', { method: 'POST', body }), '/settings').text();
    };
    expect(await send(20_000)).toHaveLength(40_000);
    await expect(send(20_001)).rejects.toMatchObject({
      status: 413,
      body: { message: expect.stringMatching(/more than 20,000 fields/) },
    });
  });

  it('that is compressed is not taken', () => {
    for (const coding of ['gzip', 'br', 'deflate, gzip'])
      expect(() => limitBody(sending(10, { 'content-encoding': coding }), '/api/plan')).toThrow(
        expect.objectContaining({ status: 415, body: { message: expect.stringContaining(coding) } }),
      );
  });
});
