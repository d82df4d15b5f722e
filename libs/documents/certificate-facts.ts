import type { PrintedFacts } from './check-code.js';
import { jointName, valueWords } from './letter-findings.js';
import type { CertificateSnapshot, JointOnPaper, StudyOnPaper } from './snapshots.js';
import { ageWords, birthWords, capital, dayWords, transponderWords } from './words.js';

type Fact = PrintedFacts[number];

export function certificateTitle({ title }: CertificateSnapshot): string {
  return title.as === 'certificate' ? 'Certificate' : 'Statement of a screening result';
}

/** Who stands behind the paper: the issuer, or a practice that states what it was sent and certifies nothing. */
export function issuerLines({ title, practice }: CertificateSnapshot): string[] {
  if (title.as === 'certificate') {
    const until = title.delegatedUntil ? `, delegated until ${dayWords(title.delegatedUntil)}` : '';
    return [`${title.issuer}, for the ${title.scheme}`, `issued through ${practice.name}${until}`];
  }
  const original = title.issuerOfOriginal
    ? `The original of ${title.issuerOfOriginal} ${title.originalAttached ? 'is attached, untouched' : 'is with the owner'}.`
    : 'There is no certificate of an issuer.';
  return [`${practice.name} states what the reader found.`, original];
}

const REST = { sedation: 'yes, sedation', anaesthesia: 'yes, anaesthesia', none: 'no' } as const;

export function headFacts(snapshot: CertificateSnapshot): Fact[] {
  const { dog, transponderReadBy, identifiedBy, imagedOn } = snapshot;
  return [
    ['Dog', dog.registeredName ?? dog.callName],
    ['Stud book', dog.studBookNumber ?? 'not entered'],
    ['Breed, sex', dog.sex === 'unknown' ? dog.breed : `${dog.breed}, ${dog.sex}`],
    ['Born', birthWords(dog.birth)],
    ['Transponder', dog.transponder ? transponderWords(dog.transponder) : 'none'],
    transponderReadBy
      ? ['Read at imaging by', `${transponderReadBy.name}, ${transponderReadBy.place}`]
      : ['Known at imaging by', identifiedBy ?? 'not recorded'],
    ['Pictures', dayWords(imagedOn)],
    ['Age that day', ageWords(dog.birth, imagedOn)],
    ['Earlier operation', snapshot.earlierOperation],
    ['Asleep for them', REST[snapshot.rest]],
    ['Issued', dayWords(snapshot.issuedAt)],
  ];
}

export function protocolWords(study: StudyOnPaper): string {
  return [study.protocol, `version ${study.protocolVersion}`, ...(study.criteria ? [study.criteria] : [])].join(', ');
}

/** What stands small under a joint's value. */
export function besideValue({ finding }: JointOnPaper): string[] {
  return finding.kind === 'value' ? [...finding.also, ...finding.flags] : [];
}

export function valueOf({ finding }: JointOnPaper): string {
  return finding.kind === 'value' ? valueWords(finding) : finding.reason;
}

function studyFacts(study: StudyOnPaper): Fact[] {
  return [
    [study.title, protocolWords(study)],
    ...study.joints.map((joint): Fact => [capital(jointName(joint)), [valueOf(joint), ...besideValue(joint)].join('; ')]),
    ['For the dog', study.dogResult],
    ...(study.comment ? [['The reader adds', study.comment] as const] : []),
  ];
}

export function signedWords({ signed }: CertificateSnapshot): string {
  return `Read by ${signed.by}; signed for the centre on ${dayWords(signed.on)}.`;
}

/** All that is printed about the dog, as label and value: what the code signs and what the check page shows. */
export function certificateFacts(snapshot: CertificateSnapshot): PrintedFacts {
  const facts: Fact[] = [
    ['Paper', certificateTitle(snapshot)],
    ['From', issuerLines(snapshot).join(' ')],
    ...headFacts(snapshot),
    ...snapshot.studies.flatMap(studyFacts),
    ['Reading', signedWords(snapshot)],
    ['Serial', snapshot.serial],
  ];
  // A no-break space is for the paper only; a person who types a fact types a plain one.
  return facts.map(([label, value]) => [label, value.replaceAll('\u00a0', ' ')]);
}
