import { readXml } from './read-xml.js';

/** How a number is shown, as far as it changes what was written: as a day, or with zeros before it. */
export interface Format { day: boolean; zeros: number }

/** By the number that a cell names. */
export function formatsIn(xml: string): Format[] {
  const codes = new Map<number, string>();
  const formats: Format[] = [];
  let cells = false;
  if (xml !== '') readXml(xml, {
    open: (name, attributes) => {
      if (name === 'cellXfs') cells = true;
      if (name === 'numFmt') codes.set(Number(attributes.get('numFmtId')), attributes.get('formatCode') ?? '');
      if (name === 'xf' && cells) formats.push(formatOf(Number(attributes.get('numFmtId') ?? 0), codes));
    },
    close: (name) => { if (name === 'cellXfs') cells = false; },
  });
  return formats;
}

function formatOf(id: number, codes: Map<number, string>): Format {
  const code = codes.get(id);
  return { day: code === undefined ? DAYS.some(([from, to]) => id >= from && id <= to) : showsDay(code), zeros: /^0{2,}$/.test(code ?? '') ? code!.length : 0 };
}

/** The days and times among the formats that need no code, ECMA-376 part 1, 18.8.30, those of some languages included. */
const DAYS = [[14, 22], [27, 36], [45, 47], [50, 58]] as const;

/** A spreadsheet writes none that is longer. */
const LONGEST = 255;
/** By the letters of day, month, year, hour or second beside words, colours, spaces and single signs. */
const showsDay = (code: string): boolean => /[dmyhs]/i.test(code.slice(0, LONGEST).replaceAll(/"[^"]*"|\\.|_.|\*.|\[(?![hms]+\])[^\]]*\]/gi, ''));
