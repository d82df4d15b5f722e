import type { Readable } from 'node:stream';
import type { LineAnswer } from '#libs/contracts/line';
import { SaidError, type Tellable } from '#libs/words/said-error';

/** One object as it leaves the house. */
export interface Item {
  /** What people call it: view and attempt. */
  name: string;
  /** Its name as a file, the same at every try. */
  file: string;
  sopClass: string;
  sopUid: string;
  studyUid: string;
  sha256: string;
  size: number;
  open(): Promise<Readable>;
}

/** A way in which objects are brought to a centre, one by one. What it throws says what becomes of the sending; see below. */
export interface Channel {
  /** Whether the centre has what is in its hands when all was brought; else a mail still has to go, and tells itself what became of it. */
  handsOver: boolean;
  /** Whether the centre has this object: asked before one is sent whose fate is not known, and after each was sent. */
  has(item: Item, signal: AbortSignal): Promise<boolean>;
  /** Resolves when the centre said that it took the object. */
  put(item: Item, signal: AbortSignal): Promise<void>;
  /** Asks as little as the centre's server can be asked, of no dog and of nothing that it has, and hands its answer on; a link by mail has none. */
  greet?(signal: AbortSignal): Promise<Greeting>;
  /** What follows when all were brought; may be called again when a worker died in it. */
  finish?(items: Item[]): Promise<void>;
}

export interface Greeting { answer: LineAnswer; status: number }

/** The centre does not want this object, and will not on another try; the others go on. */
export class ItemRefusedError extends SaidError {
  override readonly name = 'ItemRefusedError';

  constructor(sentence: Tellable) {
    super(sentence);
  }
}
