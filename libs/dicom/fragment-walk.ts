const ITEM = 0xfffee000;
const END = 0xfffee0dd;

/** Follows the fragments of a compressed image as they pass by (DICOM PS3.5 annex A.4), and keeps only what tells whether all of it is there. */
export class FragmentWalk {
  /** Without the offset table, which is the first item. */
  fragments = -1;
  ended = false;
  /** An item that is none, or one without a length. */
  wrong = false;
  /** The first bytes of the first fragment, and the last ones of the last. */
  begins = Buffer.alloc(0);
  ends = Buffer.alloc(0);
  #header = Buffer.alloc(0);
  #left = 0;

  push(chunk: Buffer): void {
    for (let at = 0; at < chunk.length && !this.ended && !this.wrong; ) {
      if (this.#left > 0) {
        const part = chunk.subarray(at, at + this.#left);
        this.#pass(part);
        at += part.length;
      } else {
        const part = chunk.subarray(at, at + 8 - this.#header.length);
        this.#header = Buffer.concat([this.#header, part]);
        at += part.length;
        if (this.#header.length === 8) this.#next();
      }
    }
  }

  #pass(part: Buffer): void {
    this.#left -= part.length;
    if (this.fragments < 1) return;
    if (this.begins.length < 2) this.begins = Buffer.concat([this.begins, part.subarray(0, 2 - this.begins.length)]);
    this.ends = Buffer.concat([this.ends, part.subarray(-3)]).subarray(-3);
  }

  #next(): void {
    const tag = this.#header.readUInt16LE(0) * 0x10000 + this.#header.readUInt16LE(2);
    this.#left = this.#header.readUInt32LE(4);
    this.#header = Buffer.alloc(0);
    if (tag === END) this.ended = true;
    else if (tag !== ITEM || this.#left === 0xffffffff) this.wrong = true;
    else {
      this.fragments += 1;
      this.ends = Buffer.alloc(0);
    }
  }
}
