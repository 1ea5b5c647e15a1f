const STATUS = {
  NotFound: 404,
  /** The name is taken. */
  Conflict: 409,
  /** Someone else changed it since it was read. */
  StaleVersion: 409,
  /** Understood, but not possible as things stand. */
  Refused: 422,
  TooLarge: 413,
  /** Another program is writing; the same request may succeed in a moment. */
  Busy: 503,
  /** The data folder or what is stored in it cannot be used. */
  Unusable: 500,
} as const;

/** What was busy is worth asking again after so long, s. */
export const RETRY_AFTER_S = 10;

export type UserErrorCode = keyof typeof STATUS;

/** An error whose message is written for the user: what, where, and what to do. */
export class UserError extends Error {
  override readonly name = 'UserError';
  readonly code: UserErrorCode;

  constructor(code: UserErrorCode, message: string, options?: ErrorOptions) {
    super(message, options);
    this.code = code;
  }

  /** HTTP status that says the same. */
  get status(): number {
    return STATUS[this.code];
  }
}
