import { readdir, readFile, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { beginOf, Incoming } from './incoming.ts';
import { expectUserError, temporaryFolder } from './test-data.ts';

let folder: string;
let incoming: Incoming;
beforeEach(async () => {
  folder = join(await temporaryFolder(), 'incoming');
  incoming = new Incoming(folder);
});

const sending = (body: BodyInit, headers: Record<string, string> = {}) =>
  new Request('http://localhost/', { method: 'POST', body, headers, duplex: 'half' });
const withFile = (content: string, name = 'track.gpx') => {
  const body = new FormData();
  body.append('pick', '3');
  body.append('file', new File([content], name));
  return body;
};
const MULTIPART = { 'content-type': 'multipart/form-data; boundary=x' };

describe('a body', () => {
  it('is handed over as it is where it is small, and as a file where it is large, which is gone afterwards', async () => {
    expect(await incoming.body(sending('{"a":1}'), 1000, async (source) => source)).toEqual(
      Buffer.from('{"a":1}'),
    );
    const large = 'x'.repeat(60_000);
    const read = await incoming.body(sending(large), 100_000, async (source) => {
      if (source instanceof Uint8Array) throw new Error('was held in memory');
      return [source.bytes, await readFile(source.path, 'utf8')];
    });
    expect(read).toEqual([60_000, large]);
    expect(await readdir(folder)).toEqual([]);
  });

  it('is refused where it is larger, stated or not', async () => {
    const refused = incoming.body(sending('x'.repeat(2000)), 1000, async () => 'used');
    await expect(refused).rejects.toMatchObject({ status: 413 });
    expect(await readdir(folder)).toEqual([]);
  });

  it('is told to come again where many come in', async () => {
    const held = Promise.withResolvers<void>();
    const eight = Array.from({ length: 8 }, () => incoming.body(sending('x'), 10, () => held.promise));
    await expectUserError(
      incoming.body(sending('x'), 10, () => held.promise),
      'Busy',
      'no more can be held',
    );
    held.resolve();
    await Promise.all(eight);
  });
});

describe('a form', () => {
  it('gives its texts, and the file as one on disk', async () => {
    const read = await incoming.form(
      sending(withFile('<gpx/>', 'Höhenweg "1".gpx')),
      100,
      async ({ form, file }) => [
        form.get('pick'),
        file?.name,
        file?.bytes,
        await readFile(file?.path ?? '', 'utf8'),
        Buffer.from(await beginOf(file?.path ?? '')).toString(),
      ],
    );
    expect(read).toEqual(['3', 'Höhenweg "1".gpx', 6, '<gpx/>', '<gpx/>']);
    expect(await readdir(folder)).toEqual([]);
  });

  it('has no file where none was chosen', async () => {
    for (const body of [withFile('', ''), new URLSearchParams({ file: 'x' })])
      expect(await incoming.form(sending(body), 100, async ({ file }) => file)).toBeUndefined();
  });

  it('keeps nothing of a file that is too large, and tells how large it is at least', async () => {
    const bytes = async ({ file }: { file: { bytes: number } | undefined }) => file?.bytes;
    expect(await incoming.form(sending(withFile('x'.repeat(200))), 100, bytes)).toBe(200);
    expect(await incoming.form(sending('', { 'content-length': '5000000' }), 100, bytes)).toBe(5_000_000);
  });

  it.each([
    ['no boundary', sending('x', { 'content-type': 'multipart/form-data' })],
    ['no form', sending('x', { 'content-type': 'text/plain' })],
    ['an end before the first part', sending('--x\r\n', MULTIPART)],
    [
      'an end within a file',
      sending('--x\r\ncontent-disposition: form-data; name="file"; filename="a"\r\n\r\nabc', MULTIPART),
    ],
  ])('that is broken is answered so: %s', async (_, request) => {
    const refused = incoming.form(request, 100, async ({ file }) => file?.bytes);
    await expect(refused).rejects.toMatchObject({ status: 400 });
    expect(await readdir(folder).catch(() => [])).toEqual([]);
  });
});

it('what an end of the program left behind is cleared away after a day', async () => {
  await incoming.body(sending('x'), 10, async () => undefined);
  const [old, young] = [join(folder, 'old'), join(folder, 'young')];
  await Promise.all([writeFile(old, ''), writeFile(young, '')]);
  await utimes(old, new Date(0), new Date(0));
  await incoming.clear(new Date());
  expect(await readdir(folder)).toEqual(['young']);
});
