import { createHash, randomBytes } from 'node:crypto';

const TOKEN_BYTES = 32;

/** @returns 256 random bits as text for an address or a cookie */
export const newToken = (): string => randomBytes(TOKEN_BYTES).toString('base64url');

/** @returns what is stored of a token; SHA-256 is enough for what cannot be guessed */
export const hashOf = (token: string): string => createHash('sha256').update(token).digest('base64url');
