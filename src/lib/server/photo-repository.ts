import { Buffer } from 'node:buffer';
import type { Transaction } from 'kysely';
import type { Picture } from '../photos/strip-picture.ts';
import type { PhotoMark, Photographed } from '../photo-href.ts';
import { say } from '../texts/say.ts';
import { reading, writing, type Database } from './database/open-database.ts';
import type { Tables } from './database/tables.ts';
import { UserError } from './errors.ts';
import { inParts } from './in-parts.ts';

/** What has a picture: a recipe by the id of its record, or a lot by its code. */
export type PhotoOf =
  { readonly kind: 'recipe'; readonly id: string } | { readonly kind: 'lot'; readonly code: string };

/** One picture for each recipe and lot, without its metadata. */
export class PhotoRepository {
  readonly #db: Database;
  readonly #now: () => string;

  constructor(db: Database, now: () => string) {
    this.#db = db;
    this.#now = now;
  }

  /** Keeps a picture in the place of the one before. @throws UserError `NotFound` where there is no such lot or recipe */
  keep(of: PhotoOf, { mediaType, width, height, bytes }: Picture): Promise<void> {
    const base64 = Buffer.from(bytes).toString('base64');
    return writing(this.#db, async (trx) => {
      const row = { mediaType, width, height, base64, keptAt: this.#now() };
      const id = (await idOf(trx, of)) ?? noSuch();
      await trx
        .insertInto('photos')
        .values({ id, ...row })
        .onConflict((conflict) => conflict.column('id').doUpdateSet(row))
        .execute();
    });
  }

  async get(of: PhotoOf): Promise<(PhotoMark & Picture) | undefined> {
    return reading(this.#db, async (trx) => {
      const id = await idOf(trx, of);
      const row =
        id === undefined
          ? undefined
          : await trx.selectFrom('photos').selectAll().where('id', '=', id).executeTakeFirst();
      if (!row) return undefined;
      const { base64, mediaType, width, height, keptAt } = row;
      return { mediaType, width, height, keptAt, bytes: new Uint8Array(Buffer.from(base64, 'base64')) };
    });
  }

  remove(of: PhotoOf): Promise<void> {
    return writing(this.#db, async (trx) => {
      const id = await idOf(trx, of);
      if (id !== undefined) await trx.deleteFrom('photos').where('id', '=', id).execute();
    });
  }

  /** That of a recipe, without its bytes. */
  async markOf(recipeId: string): Promise<PhotoMark | undefined> {
    return reading(this.#db, (trx) =>
      trx
        .selectFrom('photos')
        .select(['width', 'height', 'keptAt'])
        .where('id', '=', `${RECIPE}${recipeId}`)
        .executeTakeFirst(),
    );
  }

  /** Which lots and recipes have one. */
  async photographed(): Promise<Photographed> {
    return reading(this.#db, async (trx) => {
      const marks = new Map(
        (await trx.selectFrom('photos').select(['id', 'width', 'height', 'keptAt']).execute()).map(
          ({ id, ...mark }) => [id, mark],
        ),
      );
      const idsOf = (kind: string) =>
        [...marks.keys()].filter((id) => id.startsWith(kind)).map((id) => id.slice(kind.length));
      const lots = [];
      for await (const ids of inParts(idsOf(LOT)))
        lots.push(
          ...(await trx
            .selectFrom('lots')
            .select(['id', 'code'])
            .where('id', 'in', ids.map(Number))
            .execute()),
        );
      const recipes = [];
      for await (const ids of inParts(idsOf(RECIPE)))
        recipes.push(
          ...(await trx.selectFrom('records').select(['id', 'name']).where('id', 'in', ids).execute()),
        );
      return {
        lots: Object.fromEntries(lots.map(({ id, code }) => [code, marks.get(`${LOT}${id}`)!])),
        recipes: Object.fromEntries(recipes.map(({ id, name }) => [name, marks.get(`${RECIPE}${id}`)!])),
      };
    });
  }

  /** The picture of a lot, or else of the recipe that it is named after. */
  async ofLot(code: string): Promise<(PhotoMark & Picture) | undefined> {
    const own = await this.get({ kind: 'lot', code });
    if (own) return own;
    const recipe = await reading(this.#db, (trx) =>
      trx
        .selectFrom('lots')
        .innerJoin('records', 'records.name', 'lots.recipe')
        .select('records.id')
        .where('records.kind', '=', 'recipe')
        .where('lots.code', '=', code)
        .executeTakeFirst(),
    );
    return recipe && this.get({ kind: 'recipe', id: recipe.id });
  }
}

const LOT = 'lot ';
const RECIPE = 'recipe ';
const noSuch = (): never => {
  throw new UserError('NotFound', say('There is no such lot or recipe any more, so its photo was not kept.'));
};

async function idOf(trx: Transaction<Tables>, of: PhotoOf): Promise<string | undefined> {
  if (of.kind === 'lot') {
    const lot = await trx.selectFrom('lots').select('id').where('code', '=', of.code).executeTakeFirst();
    return lot && `${LOT}${lot.id}`;
  }
  const recipe = await trx
    .selectFrom('records')
    .select('id')
    .where('kind', '=', 'recipe')
    .where('id', '=', of.id)
    .executeTakeFirst();
  return recipe && `${RECIPE}${recipe.id}`;
}
