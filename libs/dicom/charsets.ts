import { TextDecoder } from 'node:util';

/** The character sets of DICOM PS3.3 C.12.1.1.2 by the names that decoders know. */
const NAMES: Record<string, string> = {
  '6': 'windows-1252', '100': 'windows-1252', '101': 'iso-8859-2', '109': 'iso-8859-3', '110': 'iso-8859-4', '144': 'iso-8859-5', '127': 'iso-8859-6', '126': 'iso-8859-7', '138': 'iso-8859-8',
  '148': 'windows-1254', '203': 'iso-8859-15', '13': 'shift_jis', '166': 'windows-874', '87': 'iso-2022-jp', '159': 'euc-jp', '149': 'euc-kr', '58': 'gb18030', '192': 'utf-8',
};

/** The signs that a text changes its set by (table C.12-3 and C.12-4), without the escape before them. */
const SIGNS: Record<string, string> = {
  '(B': '6', '-A': '100', '-B': '101', '-C': '109', '-D': '110', '-L': '144', '-G': '127', '-F': '126', '-H': '138', '-M': '148', '-T': '166',
  '(J': '13', ')I': '13', '$B': '87', '$(D': '159', '$)C': '149', '$)A': '58',
};
const ESCAPE = '\x1b';
const CHANGE = new RegExp(String.raw`${ESCAPE}(\([BJ]|\)I|-[A-Z]|\$B|\$\(D|\$\)[AC])`);

/** What turns the bytes of a text into words. A set that nobody knows is read as Latin, so that nothing breaks. */
export interface Decoder {
  decode(bytes: Uint8Array): string;
}

export function decoderFor(specificCharacterSet: string | undefined): Decoder {
  const first = numberOf((specificCharacterSet ?? '').split('\\')[0]!);
  const plain = new TextDecoder(NAMES[first] ?? 'windows-1252');
  return { decode: (bytes) => (bytes.includes(ESCAPE.charCodeAt(0)) ? changing(bytes, first) : plain.decode(bytes)) };
}

const numberOf = (name: string): string => (/^(GB18030|GBK)\s*$/.test(name) ? '58' : (/(\d+)\s*$/.exec(name)?.[1] ?? '6'));

/** A text of several sets, piece by piece. At the end of a part of a name, or of a value, the first set holds again. */
function changing(bytes: Uint8Array, first: string): string {
  const [begin, ...rest] = Buffer.from(bytes).toString('latin1').split(CHANGE);
  let words = inSet(first, begin!);
  for (let i = 0; i < rest.length; i += 2) {
    const [number, piece] = [SIGNS[rest[i]!] ?? first, rest[i + 1]!];
    // A sign of two bytes may hold the byte of a mark, and no part ends within such a set.
    const end = number === '87' || number === '159' ? -1 : piece.search(/[\\^=\r\n]/);
    words += end < 0 ? inSet(number, piece) : inSet(number, piece.slice(0, end)) + inSet(first, piece.slice(end));
  }
  return words;
}

function inSet(number: string, latin1: string): string {
  const bytes = Buffer.from(latin1, 'latin1');
  // Two sets are written in the lower half of the bytes, and known in the upper.
  if (number === '87') return new TextDecoder('euc-jp').decode(bytes.map((byte) => byte | 0x80));
  if (number === '159') return new TextDecoder('euc-jp').decode(Buffer.from([...bytes].flatMap((byte, i) => (i % 2 ? [byte | 0x80] : [0x8f, byte | 0x80]))));
  return new TextDecoder(NAMES[number] ?? 'windows-1252').decode(bytes);
}
