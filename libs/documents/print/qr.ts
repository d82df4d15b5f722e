import QRCode from 'qrcode';
import { INK } from './sheet.js';

/** Modules as one filled path, so that the code stays sharp at any size; the caller leaves the quiet zone around it. */
export function drawQrCode(doc: PDFKit.PDFDocument, text: string, box: { x: number; y: number; width: number }): void {
  const { modules } = QRCode.create(text, { errorCorrectionLevel: 'L' });
  const step = box.width / modules.size;
  for (let row = 0; row < modules.size; row++) {
    for (let column = 0; column < modules.size; column++) {
      if (modules.get(row, column)) doc.rect(box.x + column * step, box.y + row * step, step, step);
    }
  }
  doc.fill(INK);
}
