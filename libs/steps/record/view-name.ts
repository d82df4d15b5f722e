import type { Words } from '#libs/words/words';

/** The name of a view inside a sentence. German keeps the capitals of its nouns. */
export const viewName = (label: string, t: Words): string => (t.language === 'en' ? label.toLowerCase() : t.known(label));
