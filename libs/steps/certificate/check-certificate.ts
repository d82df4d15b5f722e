import type { CertificateCheck } from '#libs/contracts/screens/owner';
import { certificateFacts } from '#libs/documents/certificate-facts';
import type { CertificateSnapshot } from '#libs/documents/snapshots';
import { parseCertificateSerial } from '#libs/science/identifiers/certificate-serial';
import { ScienceError } from '#libs/science/error';
import type { Language } from '#libs/words/languages';
import type { StaffSentence } from '#libs/words/words';
import { t } from '#libs/words/spoken';
import type { Db } from '#libs/platform/database/db';
import { notFound, StepError } from '../record/step-error.js';

interface Row { found: { snapshot: CertificateSnapshot; state: CertificateCheck['state']; replacedBy: string | null } | null }

const SAYS: Record<CertificateCheck['state'], StaffSentence> = {
  valid: 'This paper is in force. Compare every line with the paper in your hand.',
  amended: 'This paper no longer stands: a newer reading has replaced it.',
  withdrawn: 'This paper no longer stands: it was withdrawn.',
};

const LIMITS: StaffSentence[] = [
  'It tells what was seen in these pictures on that day.',
  'It does not tell pain or lameness, later arthritis in this dog, or what its pups will have.',
  'Before the next sedation or anaesthesia tell the veterinarian about this one.',
];

/** All that is printed and whether it still stands; the database hands out nothing else, and no owner is in it. */
export async function checkCertificate(db: Db, typed: string): Promise<CertificateCheck> {
  const serial = read(typed);
  const [row] = await db.door<Row>('SELECT app.certificate($1) AS found', [serial]);
  if (!row?.found) throw notFound();
  const { snapshot: s, state, replacedBy } = row.found;
  return {
    serial, state, says: t(SAYS[state]), replacedBy,
    title: s.title.as === 'certificate' ? t('Certificate of a screening result') : t('Statement of a screening result'),
    issuedOn: s.issuedAt.slice(0, 10),
    issuer: s.practice.name,
    language: s.lang,
    printed: printedFacts(s, t.language),
    limits: LIMITS.map((limit) => t(limit)),
  };
}

/** As it stands on the paper, to be compared; and what it says, for a reader of another language. */
function printedFacts(s: CertificateSnapshot, language: Language): CertificateCheck['printed'] {
  const said = language === s.lang ? [] : (s.alsoIn?.[language] ?? certificateFacts(s, language));
  return certificateFacts(s).map(([label, value], line) => {
    const other = said[line];
    return { label, value, said: other && (other[0] !== label || other[1] !== value) ? { label: other[0], value: other[1] } : null };
  });
}

function read(typed: string): string {
  try {
    return parseCertificateSerial(typed);
  } catch (error) {
    if (error instanceof ScienceError) throw new StepError('NOT_FOUND', t.said(error.said));
    throw error;
  }
}
