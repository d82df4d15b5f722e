import PDFDocument from 'pdfkit';
import type { Moment, Paper } from '../snapshots.js';
import { FONTS, type FontName } from './fonts.js';
import { breakLines, drawLines, type RichText, type TextStyle } from './rich-text.js';

/** Two inks of the field notebook; the second is for screens only, so a paper has ink, a quieter ink and rules. */
export const INK = '#1b2230';
export const QUIET = '#49525f';
export const MARK = '#737b85';
export const RULE = '#ccd1ca';

export const mm = (millimetres: number) => (millimetres * 72) / 25.4;

export type Element = PDFKit.PDFStructureElement;
type Tag = 'P' | 'H1' | 'H2' | 'H3' | 'TH' | 'TD' | 'LBody' | 'Figure' | 'Caption' | 'Lbl';

interface Box {
  x: number;
  y: number;
  width: number;
}

export interface SheetOptions {
  paper: Paper;
  landscape?: boolean;
  title: string;
  lang: string;
  issuedAt: Moment;
}

/** One tagged file under construction: text and drawing go in together with what they are to a screen reader. */
export class Sheet {
  readonly doc: PDFKit.PDFDocument;
  readonly root: Element;
  private readonly chunks: Buffer[] = [];
  private readonly ended: Promise<void>;

  constructor(options: SheetOptions) {
    const created = new Date(options.issuedAt);
    this.doc = new PDFDocument({
      size: options.paper,
      layout: options.landscape ? 'landscape' : 'portrait',
      margin: 0,
      pdfVersion: '1.7',
      tagged: true,
      lang: options.lang,
      displayTitle: true,
      bufferPages: true,
      // No default: pdfkit opens a font anew at every use when it was given once by itself and once by name.
      font: null as unknown as string,
      info: { Title: options.title, Creator: 'Cotyla', Producer: 'Cotyla', CreationDate: created, ModDate: created },
    });
    for (const name of Object.keys(FONTS) as FontName[]) {
      this.doc.registerFont(name, FONTS[name] as unknown as Uint8Array);
    }
    this.ended = new Promise((resolve, reject) => {
      this.doc.on('data', (chunk: Buffer) => this.chunks.push(chunk));
      this.doc.on('end', resolve);
      this.doc.on('error', reject);
    });
    this.root = this.doc.struct('Document');
    this.doc.addStructure(this.root);
  }

  get width(): number {
    return this.doc.page.width;
  }

  get height(): number {
    return this.doc.page.height;
  }

  group(parent: Element, type: string): Element {
    const element = this.doc.struct(type as 'Sect');
    parent.add(element);
    return element;
  }

  /** Whatever `draw` puts on the page is the content of one element of the tree. */
  tagged<T>(parent: Element, tag: Tag, draw: () => T, options: { alt?: string; scope?: 'Row' | 'Column' } = {}): T {
    const content = this.doc.markStructureContent(tag);
    const drawn = draw();
    this.doc.endMarkedContent();
    parent.add(this.doc.struct(tag as 'P', options as PDFKit.Mixins.StructureElementOptions, [content]));
    return drawn;
  }

  /** Rules, running heads: seen, not read out. */
  artifact(draw: () => void): void {
    this.doc.markContent('Artifact', { type: 'Layout' });
    draw();
    this.doc.endMarkedContent();
  }

  measure(text: RichText, width: number, style: TextStyle): number {
    return breakLines(this.doc, text, width, style).length * style.size * style.leading;
  }

  /** Width of a text on one line. */
  widthOf(text: RichText, style: TextStyle): number {
    return breakLines(this.doc, text, Number.POSITIVE_INFINITY, style)[0]?.width ?? 0;
  }

  /** Sets text into a column and returns the height it took. */
  write(text: RichText, box: Box, style: TextStyle): number {
    return drawLines(this.doc, breakLines(this.doc, text, box.width, style), box, style);
  }

  rule(x: number, y: number, width: number, weight: number, color: string): void {
    this.artifact(() => {
      this.doc.moveTo(x, y).lineTo(x + width, y).lineWidth(weight).strokeColor(color).stroke();
    });
  }

  newPage(): void {
    this.doc.addPage();
  }

  /** Runs once every page is known, for "page 1 of 2". */
  onEveryPage(draw: (page: number, of: number) => void): void {
    const { start, count } = this.doc.bufferedPageRange();
    for (let index = 0; index < count; index++) {
      this.doc.switchToPage(start + index);
      draw(index + 1, count);
    }
  }

  async bytes(): Promise<Buffer> {
    this.doc.end();
    await this.ended;
    return Buffer.concat(this.chunks);
  }
}
