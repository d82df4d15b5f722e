import path from 'node:path';

/** The checkout's own folder. */
export const root = path.resolve(import.meta.dirname, '../..');
