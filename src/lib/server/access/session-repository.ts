import { writing, type Database } from '../database/open-database.ts';
import { hashOf, newToken } from './token.ts';

const DAY_MS = 86_400_000;
const HOUR_MS = 3_600_000;
/** A device that was not used for so long is signed out. */
export const IDLE_DAYS = 14;
/** A device is signed out after so long, however much it is used. */
export const LONGEST_DAYS = 90;

/** A device that is signed in. */
export type Session = {
  /** What is stored of its token. */
  readonly tokenHash: string;
  /** Instants, ISO 8601; when it was last seen is true to the hour. */
  readonly startedAt: string;
  readonly lastSeenAt: string;
};

/** Devices that are signed in. Each belongs to the passphrase it was signed in with, and ends with that. */
export class SessionRepository {
  readonly #db: Database;
  readonly #now: () => string;

  constructor(db: Database, now: () => string) {
    this.#db = db;
    this.#now = now;
  }

  /** @returns the token of a new session; it is stored nowhere */
  async start(passphraseId: string): Promise<string> {
    const token = newToken();
    const at = this.#now();
    await writing(this.#db, async (trx) => {
      await trx
        .deleteFrom('sessions')
        .where((is) =>
          is.or([
            is('lastSeenAt', '<', this.#ago(IDLE_DAYS)),
            is('startedAt', '<', this.#ago(LONGEST_DAYS)),
            is('passphraseId', '<>', passphraseId),
          ]),
        )
        .execute();
      await trx
        .insertInto('sessions')
        .values({ tokenHash: hashOf(token), passphraseId, startedAt: at, lastSeenAt: at })
        .execute();
    });
    return token;
  }

  /** @returns the session that a token belongs to, as long as it lasts; it is noted as seen */
  async find(token: string, passphraseId: string): Promise<Session | undefined> {
    const tokenHash = hashOf(token);
    const session = (await this.list(passphraseId)).find((one) => one.tokenHash === tokenHash);
    if (session && Date.parse(this.#now()) - Date.parse(session.lastSeenAt) > HOUR_MS)
      await this.#db
        .updateTable('sessions')
        .set({ lastSeenAt: this.#now() })
        .where('tokenHash', '=', tokenHash)
        .execute();
    return session;
  }

  /** The devices that are signed in now; the last seen comes first. */
  list(passphraseId: string): Promise<Session[]> {
    return this.#db
      .selectFrom('sessions')
      .select(['tokenHash', 'startedAt', 'lastSeenAt'])
      .where('passphraseId', '=', passphraseId)
      .where('lastSeenAt', '>=', this.#ago(IDLE_DAYS))
      .where('startedAt', '>=', this.#ago(LONGEST_DAYS))
      .orderBy('lastSeenAt', 'desc')
      .orderBy('tokenHash')
      .execute();
  }

  async end(tokenHash: string): Promise<void> {
    await this.#db.deleteFrom('sessions').where('tokenHash', '=', tokenHash).execute();
  }

  /** Signs out every device. */
  async endAll(): Promise<void> {
    await this.#db.deleteFrom('sessions').execute();
  }

  #ago(days: number): string {
    return new Date(Date.parse(this.#now()) - days * DAY_MS).toISOString();
  }
}
