/** The languages in which owners are spoken to, each by its own name. English is the one that all others are made from. */
export const languages = { en: { name: 'English', dir: 'ltr', dates: 'en-GB' }, de: { name: 'Deutsch', dir: 'ltr', dates: 'de-DE' } } as const;

export type Language = keyof typeof languages;

export const languageCodes = Object.keys(languages) as Language[];

/** Where a browser keeps the language that somebody chose who is not known by name: behind a mailed link, or before signing in. */
export const LANGUAGE_COOKIE = 'cotyla-language';

/** A person may be entered with a language that nobody has translated yet: they are spoken to in English. */
export const asLanguage = (code: string | null | undefined): Language => (code && Object.hasOwn(languages, code) ? (code as Language) : 'en');
