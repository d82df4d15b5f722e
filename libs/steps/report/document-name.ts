import { asLanguage } from '#libs/words/languages';
import type { Said } from '#libs/words/said';
import { wordsOnPaper } from '#libs/words/words';

interface Named { name: string; named: unknown }

/** What a paper is called, to whoever looks; one from before names were kept as sentences has its name alone. */
export const documentName = ({ name, named }: Named, { said }: { said: (what: Said) => string }): string => (named ? said(named as Said) : name);

/** A file that leaves the house is called in the language that the paper is written in. */
export const nameOfFile = (row: Named & { snapshot: unknown }): string => documentName(row, wordsOnPaper(asLanguage((row.snapshot as { lang?: string }).lang)));
