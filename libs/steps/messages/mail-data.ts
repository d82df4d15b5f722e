import { longDay } from '#libs/words/days';
import type { Words } from '#libs/words/words';

/** What a mail is written from: frozen when it was decided; links are made when it is sent. */
export interface MailData {
  data: Record<string, unknown>;
  toName: string;
  /** In the addressee's language. */
  t: Words;
  practice: { name: string; phone: string; address: string } | null;
  ownerLink?: string;
  /** For a statement of charges: what was frozen of it, kept apart because it is one practice's own. */
  told?: { accession: string; charges: string[]; payments: string[]; sums: string[] };
  /** For a mail about several dogs: each order's page. */
  ownerLinks?: ReadonlyMap<string, string>;
  readerLink?: string;
  joinLink?: string;
}

export interface MailText {
  /** Never says anything about a result. */
  subject: string;
  paragraphs: string[];
}

export type Template = (mail: MailData) => MailText;

export const s = (value: unknown): string => (typeof value === 'string' || typeof value === 'number' ? String(value) : '');
export const list = (value: unknown): string[] => (Array.isArray(value) ? value.map(s) : []);

/** A day as the language writes it. A mail that was decided long ago may hold it in words. */
export const dayIn = (m: MailData, value: unknown): string => (/^\d{4}-\d{2}-\d{2}$/.test(s(value)) ? longDay(m.t.language, s(value)) : s(value));
