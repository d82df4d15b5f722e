import type { z } from 'zod';
import type { newChannel } from '#libs/contracts/dispatch';
import type { Happenings } from '../queue-support/until.js';

/** A film that a centre took: its number, and the file as it came. */
export interface Taken { sopUid: string; content: Buffer }

/** A centre at the other end of a channel, with all that a real one may do. */
export interface Centre {
  /** What the practice's manager enters. */
  channel: z.input<typeof newChannel>;
  /** Each time a film was taken, also one that it had. */
  taken: Happenings<Taken>;
  /** Called when a film was taken, before the centre says so; the centre says nothing while it is under way. */
  beforeAnswer: (film: Taken) => Promise<void>;
  /** Refuses the n-th film that comes from now on, for a reason that the centre gives. */
  refuse(n: number): void;
  /** No line to it, or one again. */
  away: boolean;
  close(): Promise<void>;
}
