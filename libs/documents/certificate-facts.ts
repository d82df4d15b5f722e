import type { Language } from '#libs/words/languages';
import { wordsOnPaper, type Sentence, type Words } from '#libs/words/words';
import type { PrintedFacts } from './check-code.js';
import { jointName, valueWords } from './letter-findings.js';
import type { CertificateSnapshot, JointOnPaper, StudyOnPaper } from './snapshots.js';
import { ageWords, birthWords, capital, dayWords, transponderWords } from './words.js';

type Fact = PrintedFacts[number];

export function certificateTitle({ title }: CertificateSnapshot, t: Words): string {
  return title.as === 'certificate' ? t('Certificate') : t('Statement of a screening result');
}

/** Who stands behind the paper: the issuer, or a practice that states what it was sent and certifies nothing. */
export function issuerLines({ title, practice }: CertificateSnapshot, t: Words): string[] {
  if (title.as === 'certificate') {
    const through = title.delegatedUntil
      ? t('issued through {practice}, delegated until {day}', { practice: practice.name, day: dayWords(title.delegatedUntil, t.language) })
      : t('issued through {practice}', { practice: practice.name });
    return [t('{issuer}, for the {scheme}', { issuer: title.issuer, scheme: t.known(title.scheme) }), through];
  }
  const states = t('{practice} states what the reader found.', { practice: practice.name });
  if (!title.issuerOfOriginal) return [states, t('There is no certificate of an issuer.')];
  const original = title.originalAttached ? t('The original of {issuer} is attached, untouched.', { issuer: title.issuerOfOriginal }) : t('The original of {issuer} is with the owner.', { issuer: title.issuerOfOriginal });
  return [states, original];
}

const REST = { sedation: 'yes, sedation', anaesthesia: 'yes, anaesthesia', none: 'no' } as const satisfies Record<CertificateSnapshot['rest'], Sentence>;

export function headFacts(snapshot: CertificateSnapshot, t: Words): Fact[] {
  const { dog, transponderReadBy, identifiedBy, imagedOn } = snapshot;
  return [
    [t('Dog'), dog.registeredName ?? dog.callName],
    [t('Stud book'), dog.studBookNumber ?? t('not entered')],
    [t('Breed, sex'), dog.sex === 'unknown' ? dog.breed : `${dog.breed}, ${t(dog.sex)}`],
    [t('Born'), birthWords(dog.birth, t.language)],
    [t('Transponder'), t('{number, select, none {none} other {{number}}}', { number: dog.transponder ? transponderWords(dog.transponder) : 'none' })],
    transponderReadBy
      ? [t('Read at imaging by'), `${transponderReadBy.name}, ${transponderReadBy.place}`]
      : [t('Known at imaging by'), identifiedBy ? t.known(identifiedBy) : t('not recorded')],
    [t('Pictures'), dayWords(imagedOn, t.language)],
    [t('Age that day'), ageWords(dog.birth, imagedOn, t.language)],
    [t('Earlier operation'), t.known(snapshot.earlierOperation)],
    [t('Asleep for them'), t(REST[snapshot.rest])],
    [t('Issued'), dayWords(snapshot.issuedAt, t.language)],
  ];
}

export function protocolWords(study: StudyOnPaper, t: Words): string {
  return [t.known(study.protocol), t('version {version}', { version: study.protocolVersion }), ...(study.criteria ? [study.criteria] : [])].join(', ');
}

/** What stands small under a joint's value. */
export function besideValue({ finding }: JointOnPaper, t: Words): string[] {
  return finding.kind === 'value' ? [...finding.also, ...finding.flags].map((words) => t.known(words)) : [];
}

export function valueOf({ finding }: JointOnPaper): string {
  return finding.kind === 'value' ? valueWords(finding) : finding.reason;
}

function studyFacts(study: StudyOnPaper, t: Words): Fact[] {
  return [
    [t.known(study.title), protocolWords(study, t)],
    ...study.joints.map((joint): Fact => [capital(jointName(joint, t)), [valueOf(joint), ...besideValue(joint, t)].join('; ')]),
    [t('For the dog'), study.dogResult],
    ...(study.comment ? [[t('The reader adds'), study.comment] as const] : []),
  ];
}

export function signedWords({ signed }: CertificateSnapshot, t: Words): string {
  return t('Read by {reader}; signed for the centre on {day}.', { reader: t.known(signed.by), day: dayWords(signed.on, t.language) });
}

/**
 * All that is printed about the dog, as label and value: what the code signs and what the check page shows, in the paper's
 * language. Papers are compared with this years later, so no English or German word of it may change; a test holds them.
 * In another language it is what a reader is told beside it: what was frozen in words stays as far as nobody has said it.
 */
export function certificateFacts(snapshot: CertificateSnapshot, language: Language = snapshot.lang): PrintedFacts {
  const t = wordsOnPaper(language);
  const facts: Fact[] = [
    [t('Paper'), certificateTitle(snapshot, t)],
    [t('From'), issuerLines(snapshot, t).join(' ')],
    ...headFacts(snapshot, t),
    ...snapshot.studies.flatMap((study) => studyFacts(study, t)),
    [t('Reading'), signedWords(snapshot, t)],
    [t('Serial'), snapshot.serial],
  ];
  // A no-break space is for the paper only; a person who types a fact types a plain one.
  return facts.map(([label, value]) => [label, value.replaceAll('\u00a0', ' ')]);
}
