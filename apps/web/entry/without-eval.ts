/**
 * The schemas' checker would compile itself with `eval`, which the server's content policy forbids;
 * told so before any schema is made, it does not try.
 */
Object.assign(globalThis, { __zod_globalConfig: { jitless: true } });
