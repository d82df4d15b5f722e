import { CONSENT_COPY_TEMPLATE_VERSION, type ConsentCopySnapshot, type ConsentPurpose } from '#libs/documents/snapshots';
import { asLanguage, languages } from '#libs/words/languages';
import { wordsOnPaper, type Sentence, type Words } from '#libs/words/words';
import { findProtocol } from '#libs/science/protocols/catalogue';
import type { FactOf } from '#libs/pathway/facts';
import type { Work } from '../record/work.js';
import { dogOnPaper, moment, practiceOnPaper } from '../report/on-paper.js';
import { strokesOf } from './strokes-of.js';
import { studyConsentText } from './study-consent-text.js';

type Given = FactOf<'consentGiven'>;
const TITLES: Record<Given['purpose'], Sentence> = { sedation: 'Sedation', study: 'The pictures', sendAll: 'Sending every film taken', statistics: 'Use in the breed’s statistics' };
const UNDONE: Record<Given['purpose'], Sentence> = {
  sedation: 'Once the dog sleeps, the medicine cannot be taken back. It is watched until it is awake.',
  study: 'Pictures that have been sent cannot be called back; the centre is told.',
  sendAll: 'What has been sent cannot be called back.',
  statistics: 'What has been counted and printed stays printed.',
};
const TEXT_KINDS = { sedation: 'consentSedation', sendAll: 'consentSendAll', statistics: 'consentStatistics' };

/** What one signer has agreed to or not, each purpose with the text that was shown; null when nothing was signed. */
export async function consentCopySnapshot(work: Work, signer: string): Promise<ConsentCopySnapshot | null> {
  const given = latest(work.facts('consentGiven').filter((f) => f.signer === signer));
  const last = given.toSorted((a, b) => a.rec.localeCompare(b.rec)).at(-1);
  if (!last) return null;
  const person = await work.tx.person.findUnique({ where: { id: signer }, select: { name: true, language: true } });
  const t = wordsOnPaper(asLanguage(person?.language));
  const svg = given.map((f) => f.detail?.signatureSvg).findLast((s): s is string => typeof s === 'string');
  return {
    templateVersion: CONSENT_COPY_TEMPLATE_VERSION,
    paper: 'A4',
    lang: t.language,
    issuedAt: moment(work, last.at),
    practice: practiceOnPaper(work),
    orderNumber: work.order.accession,
    dog: await dogOnPaper(work),
    signer: { name: person?.name ?? String(last.detail?.name ?? ''), role: t(last.signerRole), authority: typeof last.detail?.authority === 'string' ? last.detail.authority : null },
    explainedBy: null,
    purposes: await Promise.all(given.map((f) => purposeOf(work, f, t))),
    signature: { signedAt: moment(work, last.at), how: t.known(String(last.detail?.how ?? 'at the practice')), drawn: strokesOf(svg) },
  };
}

const ORDER: Given['purpose'][] = ['sedation', 'study', 'sendAll', 'statistics'];

/** One answer counts for each purpose and what it is about: the last. */
function latest(facts: Given[]): Given[] {
  const bySubject = new Map<string, Given>();
  for (const f of facts) bySubject.set(`${f.purpose} ${f.purpose === 'sendAll' ? '' : (f.visit ?? f.study ?? '')}`, f);
  return [...bySubject.values()].sort((a, b) => ORDER.indexOf(a.purpose) - ORDER.indexOf(b.purpose));
}

async function purposeOf(work: Work, f: Given, t: Words): Promise<ConsentPurpose> {
  const study = f.purpose === 'study' && f.study ? work.evaluation.studies[f.study] : undefined;
  const protocol = study && findProtocol(study.protocol, study.version);
  const text = f.purpose === 'study'
    ? protocol ? shown(f, t, (said) => studyConsentText(protocol, work.order.centres[f.centre ?? study.centre]?.name ?? '', said)) : ''
    : await ownText(work, f.purpose, f.textVersion, t);
  const withdrawn = work.facts('consentWithdrawn').find((w) => w.purpose === f.purpose && w.visit === f.visit && w.study === f.study && w.rec >= f.rec);
  return {
    title: protocol ? `${t(TITLES.study)}: ${t.known(protocol.name)}` : t(TITLES[f.purpose]),
    text,
    textVersion: f.textVersion,
    answer: f.answer,
    cannotBeUndone: t(UNDONE[f.purpose]),
    details: f.emergency ? emergencyDetails(f.emergency, t) : [],
    withdrawnAt: withdrawn ? moment(work, withdrawn.at) : null,
  };
}

function shown(f: Given, t: Words, text: (t: Words) => string): string {
  const language = asLanguage(f.detail?.language as string | undefined);
  return inLanguage(text(wordsOnPaper(language)), language, t);
}

async function ownText(work: Work, purpose: keyof typeof TEXT_KINDS, version: string, t: Words): Promise<string> {
  const text = await work.tx.approvedText.findFirst({ where: { practiceId: work.order.practice, kind: TEXT_KINDS[purpose], version } });
  return text ? inLanguage(text.body, text.language, t) : '';
}

/** What was signed stays in the words that were shown; where those are of another language, the copy says so. */
const inLanguage = (text: string, language: string, t: Words): string =>
  asLanguage(language) === t.language ? text : `${t('This text was shown in {language}.', { language: t(languages[asLanguage(language)].name) })}\n${text}`;

function emergencyDetails(e: NonNullable<Given['emergency']>, t: Words): [string, string][] {
  return [
    [t('In an emergency'), e.resuscitate === 'no' ? t('do not revive') : t('try to revive')],
    [t('Spending limit'), `${t.said({ number: (e.limitMinor ?? 0) / 100, decimals: 2, unit: '' })} ${e.currency ?? ''}`.trim()],
    [t('Number answered that day'), e.number ?? t('none')],
    [t('May collect'), (e.collectors ?? []).join(', ') || t('nobody named')],
  ];
}
