import { SaxesParser } from 'saxes';
import { damaged } from './unreadable.js';

/** Names come without the prefixes that every program chooses for itself. */
export interface Hears {
  open(name: string, attributes: Map<string, string>): void;
  close?(name: string): void;
  text?(text: string): void;
}

/** XML from its beginning to its end; what is not well-formed is not read. */
export function readXml(xml: string, { open, close, text }: Hears): void {
  const parser = new SaxesParser({ xmlns: true });
  parser.on('error', () => { throw damaged(); });
  parser.on('opentag', ({ local, attributes }) => open(local, new Map(Object.values(attributes).flatMap((a) => (a.prefix === 'xmlns' ? [] : [[a.local, a.value]])))));
  if (close) parser.on('closetag', ({ local }) => close(local));
  if (text) for (const kind of ['text', 'cdata'] as const) parser.on(kind, text);
  parser.write(xml).close();
}
