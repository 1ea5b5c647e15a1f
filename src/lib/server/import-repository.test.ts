import { readdir, readFile, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { expectUserError, onEachDatabase, temporaryFolder } from './test-data.ts';

onEachDatabase(({ openTestApp }) => {
  async function* chunks(...texts: string[]): AsyncGenerator<Uint8Array> {
    for (const text of texts) yield new TextEncoder().encode(text);
  }

  describe('uploads', () => {
    test('a file is kept byte for byte until it is removed', async () => {
      const folder = await temporaryFolder();
      const app = await openTestApp(folder);
      const { id, bytes } = await app.imports.keepUpload(
        'my shelf.csv',
        chunks('code;rec', 'ipe\r\nA;Käse'),
        100,
      );
      expect(bytes).toBe(20);
      const upload = await app.imports.upload(id);
      expect(upload).toMatchObject({
        id,
        fileName: 'my shelf.csv',
        bytes,
        path: join(folder, 'imports', id),
      });
      expect(await readFile(upload!.path, 'utf8')).toBe('code;recipe\r\nA;Käse');

      await app.imports.removeUpload(id);
      expect(await app.imports.upload(id)).toBeUndefined();
      expect(await readdir(join(folder, 'imports'))).toEqual([]);
      await app.imports.removeUpload(id);
    });

    test('the web stream of a request can be kept', async () => {
      const app = await openTestApp();
      const { body } = new Response('x'.repeat(1_000_000));
      expect(await app.imports.keepUpload('big.csv', body!, 1_000_000)).toMatchObject({ bytes: 1_000_000 });
    });

    test('a file that is too large is refused before it fills the disk, and nothing of it stays', async () => {
      const folder = await temporaryFolder();
      const app = await openTestApp(folder);
      let asked = 0;
      const endless = async function* () {
        for (;;) {
          asked += 1;
          yield new Uint8Array(100_000);
        }
      };
      await expectUserError(
        app.imports.keepUpload('photo.jpg', endless(), 1_500_000),
        'TooLarge',
        '"photo.jpg"',
        '1.5 MB',
      );
      expect(asked).toBeLessThan(50);
      expect(await readdir(join(folder, 'imports'))).toEqual([]);
      expect(await app.imports.keepUpload('fits.csv', chunks('12345'), 5)).toMatchObject({ bytes: 5 });
    });

    test('an upload that breaks off leaves nothing', async () => {
      const folder = await temporaryFolder();
      const app = await openTestApp(folder);
      const broken = async function* () {
        yield new Uint8Array(10);
        throw new Error('the connection broke');
      };
      await expect(app.imports.keepUpload('a.csv', broken(), 100)).rejects.toThrow('the connection broke');
      expect(await readdir(join(folder, 'imports'))).toEqual([]);
    });

    test('a folder that cannot be made is named', async () => {
      const folder = await temporaryFolder();
      const app = await openTestApp(folder);
      await writeFile(join(folder, 'imports'), 'in the way');
      await expectUserError(
        app.imports.keepUpload('a.csv', chunks('a'), 100),
        'Unusable',
        join(folder, 'imports'),
      );
    });

    test('an id reaches no file but its own', async () => {
      const folder = await temporaryFolder();
      const app = await openTestApp(folder);
      await app.imports.keepUpload('a.csv', chunks('a'), 100);
      await writeFile(join(folder, 'diary'), 'dear diary');
      expect(await app.imports.upload('../diary')).toBeUndefined();
      await app.imports.removeUpload('../diary');
      expect(await readdir(folder)).toContain('diary');
    });

    test('old uploads and orphaned files are cleared away, young ones are kept', async () => {
      const folder = await temporaryFolder();
      let now = new Date();
      const app = await openTestApp(folder, () => now);
      const path = (id: string) => join(folder, 'imports', id);
      const daysAgo = (days: number) => new Date(now.getTime() - days * 86_400_000);
      const today = now;

      now = daysAgo(8);
      const old = await app.imports.keepUpload('old.csv', chunks('old'), 100);
      now = today;
      const young = await app.imports.keepUpload('young.csv', chunks('young'), 100);
      await writeFile(path('orphan'), '');
      await writeFile(path('arriving'), '');
      for (const name of [old.id, 'orphan']) await utimes(path(name), daysAgo(8), daysAgo(8));

      expect(await app.imports.removeOldUploads(7)).toBe(2);
      expect(await app.imports.upload(old.id)).toBeUndefined();
      expect((await readdir(join(folder, 'imports'))).sort()).toEqual([young.id, 'arriving'].sort());
      expect(await app.imports.removeOldUploads(7)).toBe(0);
    });

    test('clearing away works where nothing was ever uploaded', async () => {
      const app = await openTestApp();
      expect(await app.imports.removeOldUploads(7)).toBe(0);
    });
  });

  describe('mappings', () => {
    test('the last mapping for a header is remembered, for other programs too', async () => {
      const folder = await temporaryFolder();
      const app = await openTestApp(folder);
      expect(await app.imports.mappingFor('code|recipe')).toBeUndefined();
      await app.imports.rememberMapping('code|recipe', { code: 0 });
      await app.imports.rememberMapping('code|recipe', { code: 1, unit: 'oz' });
      await app.imports.rememberMapping('other', []);
      expect(await (await openTestApp(folder)).imports.mappingFor('code|recipe')).toEqual({
        code: 1,
        unit: 'oz',
      });
    });
  });
});
