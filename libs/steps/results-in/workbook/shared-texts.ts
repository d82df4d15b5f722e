import { plainText, TextRuns } from './text-runs.js';
import { readXml } from './read-xml.js';

/** Texts that cells name by their place; runs of one text in different letters are joined. */
export function sharedTexts(xml: string): string[] {
  const texts: string[] = [];
  const runs = new TextRuns('t');
  if (xml !== '') readXml(xml, {
    open: (name) => {
      if (name === 'si') runs.begin();
      runs.open(name);
    },
    text: (text) => runs.add(text),
    close: (name) => {
      runs.close(name);
      if (name === 'si') texts.push(plainText(runs.text));
    },
  });
  return texts;
}
