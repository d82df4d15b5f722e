import type { Socket } from 'node:net';
import { PassThrough, Writable } from 'node:stream';
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
  readonly #through = new PassThrough();
  #failed = false;

  constructor(files: FileStore, header: Buffer, maxBytes: number, private readonly socket: Socket) {
    super({ highWaterMark: Number.MAX_SAFE_INTEGER });
    const scan = new DicomScan();
    const through = this.#through;
    async function* scanned() {
      scan.push(header);
      yield header;
      for await (const chunk of through as AsyncIterable<Buffer>) {
        scan.push(chunk);
        yield chunk;
      }
      // an image of which a part is missing is not put where images are kept
      scan.end();
    }
    this.kept = files.put(scanned(), { maxBytes }).then((stored) => ({ ...stored, image: scan.end() }));
    // Whoever waits for it is told; nobody may be waiting any more.
    this.kept.catch(() => {
      this.#failed = true;
      through.destroy();
      socket.resume();
    });
    through.on('error', () => undefined);
    this.on('error', () => undefined);
  }

  override _write(chunk: Buffer, _encoding: BufferEncoding, done: () => void): void {
    // The rest of a refused image is let pass, so that the machine hears why.
    if (this.#failed) return done();
    if (this.writableLength > PAUSE_AT) this.socket.pause();
    const next = () => {
      if (this.writableLength < RESUME_AT) this.socket.resume();
      done();
    };
    if (this.#through.write(chunk)) next();
    else {
      const go = () => {
        this.#through.off('drain', go).off('close', go);
        next();
      };
      this.#through.on('drain', go).on('close', go);
    }
  }

  override _final(done: () => void): void {
    this.socket.resume();
    this.#through.end();
    done();
  }

  override _destroy(error: Error | null, done: (error: Error | null) => void): void {
    if (!this.writableFinished) this.#through.destroy(error ?? new Error('the image broke off'));
    done(null);
  }
}
