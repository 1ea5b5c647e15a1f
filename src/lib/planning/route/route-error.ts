import { say } from '../../texts/say.ts';

/** A route that cannot be read or split into days. The message is written for the user: what, where, and what to do. */
export class RouteError extends Error {
  override readonly name = 'RouteError';
  /** Line of the file that is at fault. */
  readonly line: number | undefined;
  /** Day of the trip that is at fault, from 1. */
  readonly day: number | undefined;

  constructor(message: string, where: { line?: number; day?: number } = {}) {
    super(
      where.line !== undefined
        ? say('Line {line}: {message}', { line: String(where.line), message })
        : where.day !== undefined
          ? say('Day {day}: {message}', { day: where.day, message })
          : message,
    );
    this.line = where.line;
    this.day = where.day;
  }
}
