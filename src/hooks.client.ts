/*
 * zod tries whether it may make functions from text, and the content security policy reports the try. It reads this before it tries. Set by
 * name, not by zod's own function: that would load zod on pages that do without it.
 */
Object.assign(globalThis, { __zod_globalConfig: { jitless: true } });
