import { useContext, useEffect, useState, type ReactNode } from 'react';
import type { ScreenSentence } from '#libs/words/de/screen';
import { languages, type Language } from '#libs/words/languages';
import { translator, type Words } from '#libs/words/translator';
import { Speech } from '../design/speech.js';

export type ScreenWords = Words<ScreenSentence>;

const english: ScreenWords = translator('en', {});
const spoken = new Map<Language, ScreenWords>([['en', english]]);

/** A language other than English is fetched when somebody reads it. */
async function learn(language: Language): Promise<ScreenWords> {
  const words: ScreenWords = translator(language, (await import('#libs/words/de/screen')).screen);
  spoken.set(language, words);
  return words;
}

/** Everything inside is said in the language, and the document says which that is. */
export function Speak({ language, children }: { language: Language; children: ReactNode }) {
  const [, learned] = useState<Language>();
  const words = spoken.get(language);
  useEffect(() => {
    if (!spoken.has(language)) void learn(language).then(() => learned(language));
  }, [language]);
  useEffect(() => {
    const root = document.documentElement;
    [root.lang, root.dir] = [language, languages[language].dir];
    return () => {
      [root.lang, root.dir] = ['en', 'ltr'];
    };
  }, [language]);
  return words ? <Speech value={words}>{children}</Speech> : null;
}

export const useWords = (): ScreenWords => useContext(Speech) ?? english;
