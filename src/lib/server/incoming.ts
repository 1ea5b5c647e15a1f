import { error } from '@sveltejs/kit';
import { Busboy, type BusboyInstance } from '@fastify/busboy';
import { randomUUID } from 'node:crypto';
import { createWriteStream } from 'node:fs';
import { mkdir, open, readdir, readFile, rm, stat } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { say } from '../texts/say.ts';
import type { Source } from './apart/tasks.ts';
import { UserError } from './errors.ts';
import { InTurns } from './in-turns.ts';
import { tooLarge } from './limit-body.ts';
import { storageError } from './storage-error.ts';

/** What is smaller is held in memory. */
const IN_MEMORY_BYTES = 50_000;
/** Texts beside a file. */
const LARGEST_FIELD_BYTES = 100_000;
const MOST_FIELDS = 200;
/** What a form adds around the file in it. */
const AROUND_FILE_BYTES = 100_000;
/** So many files come in at a time. */
const MOST_AT_A_TIME = 8;
const DAY_MS = 86_400_000;

/** A form with a file. The file is there only as long as the form is used. */
export type FileForm = {
  /** Its texts. */
  readonly form: FormData;
  /** `undefined` where none was chosen. Where `bytes` is more than was to be taken, nothing of it is kept. */
  readonly file: { readonly name: string; readonly path: string; readonly bytes: number } | undefined;
};

/** Takes bodies that may be large to disk as they come in, so that none is ever held in memory. */
export class Incoming {
  readonly #folder: string;
  readonly #line = new InTurns(MOST_AT_A_TIME, () =>
    say('Many files are being sent at the moment, and no more can be held. Send this again in a moment.'),
  );

  /** @param folder of its own, made where it is missing */
  constructor(folder: string) {
    this.#folder = folder;
  }

  /**
   * Takes a body in, and does something with it.
   *
   * @throws HttpError 413 where it is larger, 400 where it breaks off; UserError `Busy`, `Unusable` where the disk does not take it
   */
  async body<Result>(
    request: Request,
    mostBytes: number,
    use: (source: Source) => Promise<Result>,
  ): Promise<Result> {
    return this.#line.enter(() =>
      this.#withFile(async (path) => {
        const bytes = await this.#toDisk(path, bodyOf(request), mostBytes);
        if (bytes > mostBytes) error(413, tooLarge(mostBytes));
        return use(bytes > IN_MEMORY_BYTES ? { path, bytes } : await readFile(path));
      }),
    );
  }

  /**
   * Takes a form in whose field `file` may be a file, and does something with it. Of a file that is larger than `mostBytes`, `use` hears no more than that.
   *
   * @throws as `body`, but for 413
   */
  async form<Result>(
    request: Request,
    mostBytes: number,
    use: (sent: FileForm) => Promise<Result>,
  ): Promise<Result> {
    const stated = Number(request.headers.get('content-length'));
    if (stated > mostBytes + AROUND_FILE_BYTES)
      return use({ form: new FormData(), file: { name: '', path: '', bytes: stated } });
    return this.#line.enter(() =>
      this.#withFile(async (path) => use(await this.#readForm(request, path, mostBytes))),
    );
  }

  /** Removes what an end of the program left behind. */
  async clear(now: Date): Promise<void> {
    for (const name of await readdir(this.#folder).catch(() => [])) {
      const path = join(this.#folder, name);
      const left = await stat(path).catch(() => undefined);
      if (left && now.getTime() - left.mtimeMs > DAY_MS) await rm(path, { force: true });
    }
  }

  async #readForm(request: Request, path: string, mostBytes: number): Promise<FileForm> {
    let parser: BusboyInstance;
    try {
      parser = new Busboy({
        headers: { 'content-type': request.headers.get('content-type') ?? '' },
        limits: { files: 1, fields: MOST_FIELDS, fieldSize: LARGEST_FIELD_BYTES, fieldNameSize: 200 },
      });
    } catch {
      return broken();
    }
    const form = new FormData();
    let file: FileForm['file'];
    let kept = Promise.resolve();
    parser.on('field', (name, value) => form.append(name, value));
    parser.on('file', (field, stream, filename) => {
      if (field !== 'file' || !filename) {
        stream.resume();
        return;
      }
      kept = this.#toDisk(path, stream, mostBytes).then((bytes) => {
        // As the standard for forms has it written.
        file = { name: filename.replaceAll('%22', '"'), path, bytes };
      });
      // What fails here ends the reading of the form as well, and is thrown below.
      kept.catch((failure: Error) => parser.destroy(failure));
    });
    try {
      await pipeline(bodyOf(request), parser);
    } catch (failure) {
      await kept;
      throw failure instanceof UserError || isHttp(failure) ? failure : broken();
    }
    await kept;
    return { form, file };
  }

  async #toDisk(path: string, stream: Readable, mostBytes: number): Promise<number> {
    let bytes = 0;
    // What is too large is read to its end all the same: a browser reads the answer only then.
    const counted = async function* (pieces: AsyncIterable<Uint8Array>) {
      for await (const piece of pieces) {
        bytes += piece.byteLength;
        if (bytes <= mostBytes) yield piece;
      }
    };
    try {
      await pipeline(stream, counted, createWriteStream(path));
    } catch (failure) {
      if (isHttp(failure)) throw failure;
      const known = storageError(failure, resolve(path));
      throw known instanceof UserError ? known : broken();
    }
    return bytes;
  }

  async #withFile<Result>(use: (path: string) => Promise<Result>): Promise<Result> {
    const path = join(this.#folder, randomUUID());
    try {
      await mkdir(this.#folder, { recursive: true });
    } catch (failure) {
      throw storageError(failure, resolve(this.#folder));
    }
    try {
      return await use(path);
    } finally {
      await rm(path, { force: true }).catch(() => undefined);
    }
  }
}

/** @returns the first bytes of a file, by which files of other kinds are known */
export async function beginOf(path: string): Promise<Uint8Array> {
  const file = await open(path);
  try {
    const { buffer, bytesRead } = await file.read(Buffer.alloc(BEGIN_BYTES));
    return buffer.subarray(0, bytesRead);
  } finally {
    await file.close();
  }
}
const BEGIN_BYTES = 64;

const bodyOf = ({ body }: Request): Readable =>
  body ? Readable.fromWeb(body as Parameters<typeof Readable.fromWeb>[0]) : Readable.from([]);

/** Where the server refuses the rest of a body, it says so by a status. */
const isHttp = (failure: unknown): boolean =>
  typeof failure === 'object' && failure !== null && 'status' in failure;

function broken(): never {
  error(400, say('The upload broke off, or is not a file, so nothing was changed. Send it again.'));
}
