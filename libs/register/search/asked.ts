import { t } from '#libs/words/spoken';
import { badInput } from '../refusal.js';

export interface Asked {
  text: string;
  /** At least four digits in a row, as of a phone or transponder number; else null. */
  digits: string | null;
}

/** What was typed into a search box. */
export function asked(q: unknown): Asked {
  const typed = q ?? '';
  if (typeof typed !== 'string') throw badInput('q', t('Type a name or a number.'));
  const text = typed.replaceAll('\0', '').trim();
  if (text.length > 100) throw badInput('q', t('At most 100 signs. A name or a number is enough.'));
  const plain = text.normalize('NFKC').replace(/[\s().+/-]/g, '');
  return { text, digits: /^\d{4,}$/.test(plain) ? plain : null };
}
