import type { CertificateCheck } from '#libs/contracts/screens/owner';
import { certificateFacts } from '#libs/documents/certificate-facts';
import type { CertificateSnapshot } from '#libs/documents/snapshots';
import { formatTransponder, parseTransponder } from '#libs/science/identifiers/transponder';
import { parseCertificateSerial } from '#libs/science/identifiers/certificate-serial';
import { ScienceError } from '#libs/science/error';
import type { StaffSentence } from '#libs/words/words';
import { t } from '#libs/words/spoken';
import type { Db } from '#libs/platform/database/db';
import { ageWords } from '../record/age-words.js';
import { shortDay } from '../record/day-words.js';
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
  const study = s.studies[0]!;
  return {
    serial, state, says: t(SAYS[state]), replacedBy,
    title: s.title.as === 'certificate' ? t('Certificate of a screening result') : t('Statement of a screening result'),
    issuedOn: s.issuedAt.slice(0, 10),
    issuer: s.practice.name,
    dog: { name: s.dog.registeredName ?? s.dog.callName, breed: s.dog.breed, sex: s.dog.sex, born: s.dog.birth.earliest === s.dog.birth.latest ? shortDay(s.dog.birth.latest) : `between ${shortDay(s.dog.birth.earliest)} and ${shortDay(s.dog.birth.latest)}`, transponder: s.dog.transponder ? formatTransponder(parseTransponder(s.dog.transponder)) : 'none' },
    study: { protocol: study.protocol, version: study.protocolVersion, imagedOn: study.imagedOn, ageAtImaging: ageWords(s.dog.birth.latest, study.imagedOn), centre: study.centre, identityReadBy: s.transponderReadBy?.name ?? s.identifiedBy ?? 'not read' },
    joints: study.joints.map((j) => ({ name: `${j.side === 'left' ? 'Left' : 'Right'} ${j.joint}`, words: j.finding.kind === 'value' ? [`${j.finding.value}${j.finding.unit}`, ...j.finding.also, ...j.finding.flags].join('; ') : j.finding.reason })),
    dogResult: study.dogResult,
    printed: certificateFacts(s).map(([label, value]) => ({ label, value })),
    limits: LIMITS.map((limit) => t(limit)),
  };
}

function read(typed: string): string {
  try {
    return parseCertificateSerial(typed);
  } catch (error) {
    if (error instanceof ScienceError) throw new StepError('NOT_FOUND', error.message);
    throw error;
  }
}
