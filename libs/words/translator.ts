import { IntlMessageFormat } from 'intl-messageformat';
import { languages, type Language } from './languages.js';
import { isFigure, type Figure, type Said } from './said.js';

export type Values = Readonly<Record<string, string | number>>;

export interface Words<Sentence extends string = string> {
  /** The sentence in the language of these words. English is the key: an edited sentence is one that has to be translated anew. */
  (sentence: Sentence, values?: Values): string;
  language: Language;
  /** A sentence of a scheme's or a practice's own may have no translation; then it stays as it was written. */
  known: (text: string, values?: Values) => string;
  said: (said: Said | Figure) => string;
}

const RIGHT_TO_LEFT = /[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}]/u;

/** A name that runs from right to left is closed off, or it would draw the words and signs beside it along. */
export const isolated = (value: string): string => (RIGHT_TO_LEFT.test(value) ? `\u2068${value}\u2069` : value);

export interface Setting {
  /** Off on paper, where the print sets each script by itself and the marks would show. */
  isolate?: boolean;
}

export function translator<Sentence extends string>(language: Language, catalogue: Readonly<Record<string, string>>, { isolate = true }: Setting = {}): Words<Sentence> {
  const formats = new Map<string, IntlMessageFormat>();
  const formatOf = (sentence: string): IntlMessageFormat => {
    const made = formats.get(sentence) ?? new IntlMessageFormat(Object.hasOwn(catalogue, sentence) ? catalogue[sentence]! : sentence, languages[language].dates, undefined, { ignoreTag: true });
    formats.set(sentence, made);
    return made;
  };
  const speak = (sentence: string, values: Values = {}): string => String(formatOf(sentence).format(isolate ? Object.fromEntries(Object.entries(values).map(([name, value]) => [name, typeof value === 'string' ? isolated(value) : value])) : values));
  const say = (what: Said | Figure): string => {
    if (isFigure(what)) return figureWords(language, what);
    return known(what.text, what.values && Object.fromEntries(Object.entries(what.values).map(([name, value]) => [name, typeof value === 'object' ? say(value) : value])));
  };
  // Own words may hold a brace that opens nothing, and are no message then.
  const known = (text: string, values?: Values): string => (Object.hasOwn(catalogue, text) || values ? speak(text, values) : text);
  return Object.assign((sentence: Sentence, values?: Values) => speak(sentence, values), { language, known, said: say });
}

/** 0.38 in English, 0,38 in German. */
export const figureWords = (language: Language, { number, decimals, unit }: Figure): string =>
  `${new Intl.NumberFormat(languages[language].dates, { minimumFractionDigits: decimals, maximumFractionDigits: decimals, useGrouping: false }).format(Number(number.toFixed(decimals)))}${unit}`;
