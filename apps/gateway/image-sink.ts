import { once } from 'node:events';
import type { Socket } from 'node:net';
import { Writable } from 'node:stream';
import type { CheckedDicom } from '#libs/dicom/check-dicom';
import { DicomScan } from '#libs/dicom/scan';
import type { FileStore } from '#libs/platform/files/file-store';

const [PAUSE_AT, RESUME_AT] = [4 * 1024 * 1024, 1024 * 1024];

export interface Kept { sha256: string; size: number; image: CheckedDicom }

/**
 * Where the bytes of one image go while they arrive: into the file store and past the reader, a chunk at a time. The library
 * loses what it writes to a sink that says it is full, so this one never does; the line itself is held instead.
 */
export class ImageSink extends Writable {
  /** Resolves when the file is safe and all of it was found to be there. */
  readonly kept: Promise<Kept>;
  #waiting: Buffer[] = [];
  #bytes = 0;
  #state: 'arriving' | 'whole' | 'broken' | 'refused' = 'arriving';

  constructor(files: FileStore, header: Buffer, maxBytes: number, private readonly socket: Socket) {
    super({ highWaterMark: Number.MAX_SAFE_INTEGER });
    this.#waiting.push(header);
    const scan = new DicomScan();
    this.kept = files.put(this.#arriving(scan), { maxBytes }).then((stored) => ({ ...stored, image: scan.end() }));
    // Whoever waits for it is told; nobody may be waiting any more.
    this.kept.catch(() => {
      this.#state = 'refused';
      this.#waiting = [];
      socket.resume();
    });
    this.on('error', () => undefined);
  }

  async *#arriving(scan: DicomScan): AsyncGenerator<Buffer> {
    while (this.#state === 'arriving' || this.#waiting.length > 0) {
      const chunk = this.#waiting.shift();
      if (!chunk) await once(this, 'more');
      else {
        scan.push(chunk);
        yield chunk;
        this.#bytes -= chunk.length;
        if (this.#bytes < RESUME_AT) this.socket.resume();
      }
      if (this.#state === 'broken') throw new Error('the image broke off');
    }
    // an image of which a part is missing is not put where images are kept
    scan.end();
  }

  override _write(chunk: Buffer, _encoding: BufferEncoding, done: () => void): void {
    // The rest of a refused image is let pass, so that the machine hears why.
    if (this.#state === 'arriving') {
      this.#waiting.push(chunk);
      this.#bytes += chunk.length;
      if (this.#bytes > PAUSE_AT) this.socket.pause();
      this.emit('more');
    }
    done();
  }

  override _final(done: () => void): void {
    this.#end('whole');
    done();
  }

  override _destroy(error: Error | null, done: (error: Error | null) => void): void {
    this.#end('broken');
    done(error && null);
  }

  #end(state: 'whole' | 'broken'): void {
    if (this.#state !== 'arriving') return;
    this.#state = state;
    this.socket.resume();
    this.emit('more');
  }
}
