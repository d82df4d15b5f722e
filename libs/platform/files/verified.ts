import { createHash } from 'node:crypto';
import { Transform } from 'node:stream';
import { FileCorruptError } from './file-errors.js';

/** Passes a stream through and holds its last chunk back until the whole is known to be what its name says. */
export function verified(sha256: string): Transform {
  const hash = createHash('sha256');
  let held: Buffer | undefined;
  return new Transform({
    transform(chunk: Buffer, _, done) {
      hash.update(chunk);
      const before = held;
      held = chunk;
      done(null, before);
    },
    flush(done) {
      if (hash.digest('hex') === sha256) done(null, held);
      else done(new FileCorruptError(sha256));
    },
  });
}
