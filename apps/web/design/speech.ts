import { createContext, useContext } from 'react';
import type { ScreenSentence } from '#libs/words/de/screen';
import type { Language } from '#libs/words/languages';
import type { Words } from '#libs/words/translator';
import { t } from '../words/t.js';

/** The language of an owner's page; those who sign in have theirs in `words/t`. */
export const Speech = createContext<Words<ScreenSentence> | null>(null);

/** For pieces that owners and practices share: their sentences have no places to fill. */
export const useSay = (): ((sentence: ScreenSentence) => string) => useContext(Speech) ?? t;

/** What came from elsewhere, as far as the language has it. */
export const useKnown = (): ((text: string) => string) => useContext(Speech)?.known ?? t.known;

export const useLanguage = (): Language => useContext(Speech)?.language ?? t.language;
