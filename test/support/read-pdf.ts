import { createRequire } from 'node:module';

type PdfJs = typeof import('pdfjs-dist');

const require = createRequire(import.meta.url);

export interface ReadPdf {
  pages: string[];
  text: string;
  title: string;
  lang: string | null;
  /** Roles of the structure tree in reading order, page after page. */
  tags: string[];
  /** What stands for each picture, to whoever cannot see it. */
  figures: string[];
  displaysTitle: boolean;
  size: [width: number, height: number];
}

function rolesOf(node: object | null): string[] {
  if (!node || !('role' in node)) return [];
  const children = 'children' in node ? (node.children as object[]) : [];
  return [String(node.role), ...children.flatMap(rolesOf)];
}

function altsOf(node: object | null): string[] {
  if (!node) return [];
  const own = 'alt' in node && typeof node.alt === 'string' ? [node.alt] : [];
  return [...own, ...('children' in node ? (node.children as object[]).flatMap(altsOf) : [])];
}

/** What a reader and a screen reader find in a paper; for tests only. */
export async function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
  const { getDocument } = (await import('pdfjs-dist/legacy/build/pdf.mjs' as string)) as PdfJs;
  const standardFontDataUrl = require.resolve('pdfjs-dist/package.json').replace('package.json', 'standard_fonts/');
  const task = getDocument({ data: new Uint8Array(bytes), standardFontDataUrl, verbosity: 0 });
  const document = await task.promise;
  const pages: string[] = [];
  const tags: string[] = [];
  const figures: string[] = [];
  let size: [number, number] = [0, 0];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const { items } = await page.getTextContent();
    pages.push(items.map((item) => ('str' in item ? item.str + (item.hasEOL ? '\n' : '') : '')).join('').replace(/[\s\u00a0]+/g, ' '));
    const tree = await page.getStructTree();
    tags.push(...rolesOf(tree));
    figures.push(...altsOf(tree));
    const view = page.getViewport({ scale: 1 });
    size = [view.width, view.height];
  }
  const { info } = await document.getMetadata();
  const facts = info as { Title: string; Language: string | null };
  const preferences = (await document.getViewerPreferences()) as { DisplayDocTitle?: boolean } | null;
  await task.destroy();
  return {
    pages, text: pages.join(' '), title: facts.Title, lang: facts.Language, tags, figures, size,
    displaysTitle: preferences?.DisplayDocTitle === true,
  };
}
