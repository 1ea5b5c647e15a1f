import { hash } from 'node:crypto';

/** @returns SHA-256 of a value as JSON, in base64url: the same for what is written the same */
export const digestOf = (value: unknown): string => hash('sha256', JSON.stringify(value), 'base64url');
