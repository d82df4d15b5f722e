import { german, type German } from './de/german.js';
import { answers } from './de/staff/answers.js';
import type { Language } from './languages.js';
import { translator, type Setting, type Words as WordsOf } from './translator.js';

export type Sentence = German;
export type Words = WordsOf<Sentence>;

const made = new Map<string, Words>();

/** All that owners are told in one language, for the server; the web loads the words of its pages alone. */
export function wordsIn(language: Language, setting: Setting = {}): Words {
  const key = `${language} ${setting.isolate ?? true}`;
  const words = made.get(key) ?? translator<Sentence>(language, language === 'de' ? german : {}, setting);
  made.set(key, words);
  return words;
}

export type StaffSentence = German | keyof typeof answers;

const forStaff: Record<Language, WordsOf<StaffSentence>> = { en: translator('en', {}), de: translator('de', { ...german, ...answers }) };

/** The same, and what those who sign in are answered. */
export const staffWordsIn = (language: Language): WordsOf<StaffSentence> => forStaff[language];

/** On paper no mark that isolates is needed, nor would it be drawn. */
export const wordsOnPaper = (language: Language): Words => wordsIn(language, { isolate: false });
