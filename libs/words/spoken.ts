import { AsyncLocalStorage } from 'node:async_hooks';
import { languageCodes, type Language } from './languages.js';
import type { Figure, Said } from './said.js';
import type { Values, Words } from './translator.js';
import { staffWordsIn, type StaffSentence } from './words.js';

/** The language of whoever sent the request that is being answered. It may become known while it is. */
const reader = new AsyncLocalStorage<{ language: Language }>();

/** All that `work` says with `t` is said in this language, unless it learns of another. */
export const speakingIn = <T>(language: Language, work: () => T): T => reader.run({ language }, work);

export function speakInstead(language: Language): void {
  const store = reader.getStore();
  if (store) store.language = language;
}

const words = () => staffWordsIn(reader.getStore()?.language ?? 'en');

/**
 * Says a sentence to the person who asked: in English where nobody did, as in a job. What is stored is said when it is
 * read, and never before: the next reader may have another language.
 */
export const t = Object.defineProperty(
  Object.assign((sentence: StaffSentence, values?: Values) => words()(sentence, values), {
    known: (text: string, values?: Values) => words().known(text, values),
    said: (what: Said | Figure) => words().said(what),
  }),
  'language',
  { get: () => words().language },
) as Words<StaffSentence>;

/** What was chosen in a browser, else what it asks for, as far as there is such a language: "de-CH, de;q=0.9, en;q=0.8". */
export function languageAsked(header: string | undefined, chosen?: string): Language {
  const asked = (header ?? '').split(',').map((part) => part.trim().slice(0, 2).toLowerCase());
  return languageCodes.find((code) => code === chosen) ?? languageCodes.find((code) => code === asked.find((a) => languageCodes.some((c) => c === a))) ?? 'en';
}
