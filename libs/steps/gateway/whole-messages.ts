const HEADER = 6;
const DATA = 4;
const MOST_OTHER = 65_536;

/**
 * Cuts what comes over a line into whole messages (PDU, DICOM PS3.8 section 9.3) and throws at the first impossible length, before
 * anything is kept of it. The library believes every length, and copies all that it has of a message with every chunk of it.
 */
export class WholeMessages {
  /** Less than a header. */
  #begun: Buffer = Buffer.alloc(0);
  #parts: Buffer[] = [];
  #have = 0;
  #wanted = 0;

  constructor(private readonly longestData: number) {}

  *cut(chunk: Buffer): Generator<Buffer> {
    for (let rest = chunk; rest.length > 0; ) {
      if (this.#wanted === 0) {
        if (this.#begun.length > 0) rest = Buffer.concat([this.#begun, rest]);
        if (rest.length < HEADER) {
          this.#begun = rest;
          return;
        }
        this.#begun = Buffer.alloc(0);
        this.#wanted = HEADER + this.#claimed(rest);
      }
      const part = rest.subarray(0, this.#wanted - this.#have);
      rest = rest.subarray(part.length);
      this.#parts.push(part);
      this.#have += part.length;
      if (this.#have < this.#wanted) return;
      yield this.#whole();
    }
  }

  #claimed(header: Buffer): number {
    const [type, length] = [header[0]!, header.readUInt32BE(2)];
    if (type < 1 || type > 7 || length > (type === DATA ? this.longestData : MOST_OTHER)) throw new Error(`a message of type ${type} and ${length} bytes is none`);
    return length;
  }

  #whole(): Buffer {
    const [first, ...more] = this.#parts as [Buffer, ...Buffer[]];
    this.#parts = [];
    this.#have = 0;
    this.#wanted = 0;
    return more.length === 0 ? first : Buffer.concat([first, ...more]);
  }
}
