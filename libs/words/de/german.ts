import { certificate } from './certificate.js';
import { mails } from './mails.js';
import { ownerPage } from './owner-page.js';
import { papers } from './papers.js';
import { referral } from './referral.js';
import { screen } from './screen.js';
import { shared } from './shared.js';
import { studies } from './studies.js';

/** All that owners are told, in German, by the English sentence. */
export const german = { ...certificate, ...mails, ...ownerPage, ...papers, ...referral, ...screen, ...shared, ...studies } as const;

export type German = keyof typeof german;
