import type { DataSet, Element } from 'dicom-parser';
import type { CheckedDicom } from './check-dicom.js';
import { FragmentWalk } from './fragment-walk.js';
import { ImageRefused } from './image-refused.js';
import { inconsistent, shapeOf, truncated, type Shape } from './image-shape.js';
import { orDamaged, PIXELS, readHead } from './read-data-set.js';
import { says } from './says.js';
import { dicomSyntax, type DicomSyntax } from './syntaxes.js';

/** Everything before the pixels of a radiograph is some thousand bytes; a small picture beside it may be some hundred thousand. */
const MAX_HEAD = 8 * 1024 * 1024;
const FIRST_LOOK = 64 * 1024;

interface Head { data: DataSet; pixels: Element; shape: Shape; transferSyntax: string; syntax: DicomSyntax }

/**
 * Reads a DICOM file as it passes by, whatever its size, and keeps no more than what stands before its pixels. Whether all
 * pixels are there is told from lengths and marks alone: the decoders make a whole picture of half a file without a word.
 */
export class DicomScan {
  #parts: Buffer[] = [];
  #kept = 0;
  #look = FIRST_LOOK;
  #size = 0;
  #head: Head | undefined;
  readonly #walk = new FragmentWalk();

  push(chunk: Buffer): void {
    this.#size += chunk.length;
    if (this.#head) {
      if (this.#head.syntax.compressed) this.#walk.push(chunk);
      return;
    }
    this.#parts.push(chunk);
    this.#kept += chunk.length;
    if (this.#kept < this.#look) return;
    this.#look *= 4;
    try {
      this.#readHead();
    } catch (error) {
      // the bytes so far may end inside an element
      if (error instanceof ImageRefused) throw error;
    }
    if (!this.#head && this.#kept > MAX_HEAD) throw inconsistent('what stands before the image is longer than any X-ray system writes');
  }

  /** What was read, once all has passed; throws ImageRefused. */
  end(): CheckedDicom {
    if (!this.#head) orDamaged(() => this.#readHead());
    const head = this.#head;
    if (!head) throw new ImageRefused('DICOM_WITHOUT_IMAGE', 'The DICOM file holds no image, or it was cut short before the image. Choose the film itself and send that file.');
    if (head.syntax.compressed) this.#checkFragments(head, head.syntax);
    else this.#checkLength(head);
    const { shape, data, transferSyntax, syntax } = head;
    return {
      kind: 'dicom', width: shape.columns, height: shape.rows, bits: shape.bitsStored, channels: shape.samples, frames: shape.frames,
      transferSyntax, compressed: syntax.compressed, ...orDamaged(() => says(data)),
    };
  }

  #readHead(): void {
    const kept = this.#parts.length === 1 ? this.#parts[0]! : Buffer.concat(this.#parts);
    this.#parts = [kept];
    const data = readHead(kept);
    const pixels = data.elements[PIXELS];
    if (!pixels) return;
    const transferSyntax = data.string('x00020010') ?? '';
    const syntax = dicomSyntax(transferSyntax);
    if (!syntax)
      throw new ImageRefused('DICOM_TRANSFER_SYNTAX_UNKNOWN', 'The DICOM file is stored in a way (transfer syntax) that cannot be read here. Export the film uncompressed or as JPEG or JPEG 2000.');
    this.#head = { data, pixels, transferSyntax, syntax, shape: orDamaged(() => shapeOf(data)) };
    if (syntax.compressed) this.#walk.push(kept.subarray(pixels.dataOffset));
    this.#parts = [];
  }

  /** PS3.5: the pixels are exactly what rows, columns and bits say, filled up to an even length. */
  #checkLength({ pixels, shape }: Head): void {
    const expected = (shape.rows * shape.columns * shape.frames * shape.perPixel * shape.bitsAllocated) / 8;
    if (pixels.hadUndefinedLength) throw inconsistent('the image is said to be uncompressed but is not');
    if (pixels.dataOffset + pixels.length > this.#size) throw truncated();
    if (pixels.length < expected) throw truncated();
    if (pixels.length > expected + 1) throw inconsistent(`${pixels.length} bytes are there for an image of ${expected}`);
  }

  #checkFragments({ pixels, shape }: Head, syntax: Extract<DicomSyntax, { compressed: true }>): void {
    const { fragments, ended, wrong, begins, ends } = this.#walk;
    if (!pixels.hadUndefinedLength) throw inconsistent('the image is said to be compressed but is not');
    if (wrong || !ended || fragments < Math.max(1, shape.frames)) throw truncated();
    if (!syntax.begins) return;
    if (!begins.equals(Buffer.from(syntax.begins))) throw inconsistent('the image is not compressed in the way it says');
    if (!/ffd9(00|ff)?$/.test(ends.toString('hex'))) throw truncated();
  }
}
