import type { PageSentence } from '#libs/words/de/staff/page-words';
import { t } from '../words/t.js';

const words: Record<string, PageSentence> = { owner: 'owner', coOwner: 'co-owner', breeder: 'breeder', agent: 'agent', payer: 'payer', addressee: 'addressee' };

/** What somebody is to a dog. */
export const rolesOf = (roles: readonly string[]): string => roles.map((role) => (words[role] ? t(words[role]) : role)).join(', ');
