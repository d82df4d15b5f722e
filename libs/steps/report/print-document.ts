import { renderCertificate } from '#libs/documents/certificate';
import { renderConsentCopy } from '#libs/documents/consent-copy';
import { renderGoingHome } from '#libs/documents/going-home';
import { renderLetter } from '#libs/documents/letter';
import { renderReferralLetter, type ReferralLetterSnapshot } from '#libs/documents/referral-letter';
import type { CertificateSnapshot, ConsentCopySnapshot, GoingHomeSnapshot, LetterSnapshot } from '#libs/documents/snapshots';

/** The bytes of a stored paper: always the same for the same snapshot. */
export async function printDocument(kind: string, snapshot: unknown): Promise<Buffer> {
  if (kind === 'letter') return renderLetter(snapshot as LetterSnapshot);
  if (kind === 'certificate') return renderCertificate(snapshot as CertificateSnapshot);
  if (kind === 'goingHome') return renderGoingHome(snapshot as GoingHomeSnapshot);
  if (kind === 'consentCopy') return renderConsentCopy(snapshot as ConsentCopySnapshot);
  if (kind === 'referralLetter') return renderReferralLetter(snapshot as ReferralLetterSnapshot);
  throw new Error(`No paper is called ${kind}.`);
}
