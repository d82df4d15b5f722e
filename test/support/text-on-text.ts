import type { TextItem } from 'pdfjs-dist/types/src/display/api.js';

type PdfJs = typeof import('pdfjs-dist');

interface Box { words: string; left: number; right: number; bottom: number; top: number }

/** Letters without their tails; what is smaller than this lies beside, not over. */
const CLOSE = 0.5;

/** Words of a paper that lie over other words, or run over its edge; for tests only. */
export async function textOnText(bytes: Uint8Array): Promise<string[]> {
  const { getDocument } = (await import('pdfjs-dist/legacy/build/pdf.mjs' as string)) as PdfJs;
  const task = getDocument({ data: new Uint8Array(bytes), verbosity: 0 });
  const document = await task.promise;
  const found: string[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const { width } = page.getViewport({ scale: 1 });
    const { items } = await page.getTextContent();
    const boxes = items.filter((item): item is TextItem => 'str' in item && item.str.trim() !== '').map(boxOf);
    boxes.forEach((box, i) => {
      if (box.left < 40 || box.right > width - 40) found.push(`${box.words} | the edge`);
      for (const other of boxes.slice(i + 1)) if (over(box, other)) found.push(`${box.words} | ${other.words}`);
    });
  }
  await task.destroy();
  return found;
}

function boxOf({ str, transform, width }: TextItem): Box {
  const [, , , size, left, base] = transform as [number, number, number, number, number, number];
  return { words: str, left, right: left + width, bottom: base, top: base + size * 0.7 };
}

const over = (a: Box, b: Box): boolean => a.left < b.right - CLOSE && b.left < a.right - CLOSE && a.bottom < b.top - CLOSE && b.bottom < a.top - CLOSE;
