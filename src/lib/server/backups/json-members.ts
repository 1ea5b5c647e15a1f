/** A member of a JSON object as the text of its value; of a list each element, with its place in it. Of an empty list there is neither. */
export type Member = { readonly key: string; readonly index?: number; readonly text?: string };

/** What is no JSON object, or none that can be read bit by bit. `at` names the member. */
export class NotMembers extends Error {
  readonly at: string;

  constructor(message: string, at: string) {
    super(message);
    this.at = at;
  }
}

/** More than any row holds. */
const LONGEST_CHARS = 20_000_000;

/**
 * Takes a JSON object apart into its members, and lists in it into their elements, so that memory holds one of these at a time. What they hold is left as text.
 *
 * @param pieces of the text, cut anywhere
 * @throws NotMembers where brackets, keys or commas are not those of a JSON object, or a part is too long
 * @example `{"a":1,"b":[2,3]}` gives a with "1", b[0] with "2" and b[1] with "3"
 */
export async function* jsonMembers(pieces: AsyncIterable<string>): AsyncGenerator<Member> {
  const reader = new MemberReader();
  for await (const piece of pieces) yield* reader.read(piece);
  reader.end();
}

class MemberReader {
  #awaits: 'object' | 'key' | 'value' | 'element' | 'next' | 'nothing' = 'object';
  /** Brackets that are open within a value or an element. */
  #depth = 0;
  #isInText = false;
  #isEscaped = false;
  /** The beginning of the part that is being read, where it stood in pieces before. */
  #before = '';
  #key = '';
  #index: number | undefined;

  *read(piece: string): Generator<Member> {
    let from = 0;
    for (let at = 0; at < piece.length; at += 1) {
      const letter = piece[at]!;
      if (this.#isInText || letter === '"') this.#passText(letter);
      else if ('{}[],:'.includes(letter)) {
        const text = this.#before + piece.slice(from, at);
        if (!this.#ends(letter, text)) continue;
        const member = this.#part(letter, text);
        if (member) yield member;
        this.#before = '';
        from = at + 1;
      }
    }
    this.#before += piece.slice(from);
    if (this.#before.length > LONGEST_CHARS)
      throw this.#wrong(`longer than ${LONGEST_CHARS / 1_000_000} million characters`);
  }

  end(): void {
    if (this.#awaits !== 'nothing') throw this.#wrong('Unexpected end of JSON');
    this.#expect(this.#before.trim() === '');
  }

  #passText(letter: string): void {
    if (this.#isEscaped) this.#isEscaped = false;
    else if (letter === '\\') this.#isEscaped = true;
    else if (letter === '"') this.#isInText = !this.#isInText;
  }

  /** Whether a sign ends a part, and does not belong to it. */
  #ends(sign: string, text: string): boolean {
    if (this.#awaits !== 'value' && this.#awaits !== 'element') return true;
    const opens = sign === '{' || sign === '[';
    if (this.#depth === 0 && !opens) return true;
    if (this.#depth === 0 && sign === '[' && this.#awaits === 'value' && text.trim() === '') return true;
    if (opens) this.#depth += 1;
    else if (sign === '}' || sign === ']') this.#depth -= 1;
    return false;
  }

  #part(sign: string, text: string): Member | undefined {
    const isBlank = text.trim() === '';
    switch (this.#awaits) {
      case 'object':
        this.#expect(isBlank && sign === '{');
        this.#awaits = 'key';
        return undefined;
      case 'key':
        this.#expect(sign === ':');
        this.#key = this.#keyOf(text);
        this.#awaits = 'value';
        return undefined;
      case 'value':
        if (sign === '[') {
          this.#index = 0;
          this.#awaits = 'element';
          return undefined;
        }
        this.#goOn(sign);
        return { key: this.#key, text };
      case 'element':
        return this.#element(sign, text, isBlank);
      case 'next':
        this.#expect(isBlank);
        this.#goOn(sign);
        return undefined;
      case 'nothing':
        throw this.#wrong('Unexpected sign after the end of JSON');
    }
  }

  #element(sign: string, text: string, isBlank: boolean): Member {
    const index = this.#index ?? 0;
    this.#expect(sign === ',' || sign === ']');
    const isEmpty = isBlank && sign === ']' && index === 0;
    if (sign === ']') {
      this.#awaits = 'next';
      this.#index = undefined;
    } else this.#index = index + 1;
    return { key: this.#key, ...(!isEmpty && { index, text }) };
  }

  #goOn(sign: string): void {
    this.#expect(sign === ',' || sign === '}');
    this.#awaits = sign === ',' ? 'key' : 'nothing';
  }

  #keyOf(text: string): string {
    try {
      const key: unknown = JSON.parse(text);
      if (typeof key === 'string') return key;
    } catch {
      // Said below.
    }
    throw this.#wrong('Unexpected key of a JSON object');
  }

  #expect(isSo: boolean): void {
    if (!isSo) throw this.#wrong('Unexpected sign in JSON');
  }

  #wrong(problem: string): NotMembers {
    return new NotMembers(problem, this.#index === undefined ? this.#key : `${this.#key}[${this.#index}]`);
  }
}
