/** A measured value: written with its decimals, and with the decimal sign of the language. */
export interface Figure {
  number: number;
  decimals: number;
  /** With the space before it, where one stands: " mm". */
  unit: string;
}

/**
 * A sentence of a part that knows no language: the English one, which is also what translations are found by, and what
 * stands in its places. A place may hold a phrase that is itself to be translated.
 */
export interface Said<Sentence extends string = string> {
  text: Sentence;
  values?: Readonly<Record<string, string | number | Said | Figure>>;
}

export const said = <const Sentence extends string>(text: Sentence, values?: Said['values'] | undefined): Said<Sentence> => (values ? { text, values } : { text });

export const figure = (number: number, decimals: number, unit = ''): Figure => ({ number, decimals, unit });

export const isFigure = (value: Said | Figure): value is Figure => 'number' in value;

/** As it is said in English, where a sentence has no forms to choose from. */
export function inEnglish({ text, values = {} }: Said): string {
  return text.replace(/\{(\w+)\}/g, (place, name: string) => {
    const value = values[name];
    if (value === undefined) return place;
    if (typeof value !== 'object') return String(value);
    return isFigure(value) ? `${value.number.toFixed(value.decimals)}${value.unit}` : inEnglish(value);
  });
}
