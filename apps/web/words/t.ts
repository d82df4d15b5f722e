import { useSyncExternalStore } from 'react';
import type { PageSentence } from '#libs/words/de/staff/page-words';
import { asLanguage, LANGUAGE_COOKIE, languages, type Language } from '#libs/words/languages';
import type { Figure, Said } from '#libs/words/said';
import { translator, type Values, type Words } from '#libs/words/translator';

type PageWords = Words<PageSentence>;

const english: PageWords = translator('en', {});
let words = english;
const watching = new Set<() => void>();

/**
 * Says a sentence in the language of whoever signed in. A document has one reader, so this is no hook; a text at the top of
 * a file would be said before the language is known, and is therefore kept as a sentence and said where it is shown.
 */
export const t = Object.defineProperty(
  Object.assign((sentence: PageSentence, values?: Values) => words(sentence, values), {
    known: (text: string, values?: Values) => words.known(text, values),
    said: (what: Said | Figure) => words.said(what),
  }),
  'language',
  { get: () => words.language },
) as PageWords;

/** What was chosen in this browser, else what it asks for, where nobody is known yet. */
export const browserLanguage = (): Language => asLanguage(new RegExp(`(?:^|; )${LANGUAGE_COOKIE}=(\\w+)`).exec(document.cookie)?.[1] ?? navigator.language.slice(0, 2));

/** For a year, in a cookie, so that the server's answers follow too. */
export const keepInBrowser = (language: Language): void => {
  document.cookie = `${LANGUAGE_COOKIE}=${language}; path=/; max-age=31536000; samesite=lax`;
};

/** Another language than English is fetched when somebody reads it. */
export async function readIn(language: Language): Promise<void> {
  if (language === words.language) return;
  words = language === 'en' ? english : translator(language, (await import('#libs/words/de/staff/page-words')).pageWords);
  const root = document.documentElement;
  [root.lang, root.dir] = [language, languages[language].dir];
  for (const told of watching) told();
}

const watch = (told: () => void) => {
  watching.add(told);
  return () => void watching.delete(told);
};

/** For what holds all pages: it draws anew when the language changes. */
export const useReading = (): Language => useSyncExternalStore(watch, () => words.language);
