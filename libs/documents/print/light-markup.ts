import type { RichText } from './rich-text.js';

export type Block = { kind: 'paragraph'; text: RichText } | { kind: 'list'; items: RichText[] };

/** Blank line between paragraphs, "- " for a list; **bold** is left for the line breaker. */
export function readLightMarkup(source: string): Block[] {
  const blocks: Block[] = [];
  let open: Block | null = null;
  for (const raw of source.replaceAll('\r\n', '\n').split('\n')) {
    const line = raw.trim();
    if (line === '') open = null;
    else if (line.startsWith('- ')) {
      if (open?.kind !== 'list') blocks.push((open = { kind: 'list', items: [] }));
      open.items.push(line.slice(2).trim());
    } else if (open?.kind === 'paragraph') open.text += ` ${line}`;
    else if (open?.kind === 'list') open.items[open.items.length - 1] += ` ${line}`;
    else blocks.push((open = { kind: 'paragraph', text: line }));
  }
  return blocks;
}
