import { t } from '#libs/words/spoken';
import { languages, type Language } from '#libs/words/languages';

/** "ALM 1,328.64". */
export const moneyWords = (minor: number, currency: string, language: Language = 'en'): string => `${currency} ${(minor / 100).toLocaleString(languages[language].dates, { minimumFractionDigits: 2, maximumFractionDigits: 2 })}`;

/** To whoever asked and in their language; never for what is stored. */
export const spokenMoney = (minor: number, currency: string): string => moneyWords(minor, currency, t.language);
