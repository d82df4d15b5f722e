declare module 'pg-copy-streams' {
  import type { Readable, Writable } from 'node:stream';
  import type { Submittable } from 'pg';

  /** Reads what `COPY … TO STDOUT` gives. */
  export function to(sql: string): Readable & Submittable & { rowCount: number };
  /** Writes what `COPY … FROM STDIN` takes. */
  export function from(sql: string): Writable & Submittable & { rowCount: number };
}
