import { certificateFacts } from '#libs/documents/certificate-facts';
import { CERTIFICATE_TEMPLATE_VERSION, type CertificateSnapshot } from '#libs/documents/snapshots';
import { findProtocol } from '#libs/science/protocols/catalogue';
import { languageCodes, type Language } from '#libs/words/languages';
import { wordsOnPaper, type Sentence } from '#libs/words/words';
import type { Work } from '../record/work.js';
import { checkAddress, dogOnPaper, moment, practiceOnPaper, today } from './on-paper.js';
import { studyOnPaper } from './study-on-paper.js';

const OPERATED = { yes: 'yes, as the owner states', no: 'none, as the owner states', unknown: 'not known, as the owner states' } as const satisfies Record<string, Sentence>;

export interface Certified {
  study: string;
  result: string;
  serial: string;
  language: Language;
}

/** A paper has one language; who checks it may read another, and is told what each line says. */
export async function certificateSnapshot(work: Work, certified: Certified): Promise<CertificateSnapshot> {
  const others = languageCodes.filter((code) => code !== certified.language);
  const alsoIn = await Promise.all(others.map(async (language) => [language, certificateFacts(await written(work, { ...certified, language }))]));
  return { ...(await written(work, certified)), alsoIn: Object.fromEntries(alsoIn) as CertificateSnapshot['alsoIn'] };
}

/** Only facts that are printed, and no owner. The code is signed when the paper is printed: the key stays with the worker. */
async function written(work: Work, { study, result, serial, language }: Certified): Promise<CertificateSnapshot> {
  const t = wordsOnPaper(language);
  const standing = work.evaluation.studies[study]!;
  const protocol = findProtocol(standing.protocol, standing.version)!;
  const home = work.order.practices[work.order.practice]!;
  const paper = studyOnPaper(work, study, result, t);
  const scan = work.facts('identityScanned').filter((f) => f.place === 'table' && f.numbers.length > 0).at(-1);
  const operated = work.facts('answersGiven').map((f) => f.answers.operated).filter(Boolean).at(-1);
  const named = scan as (typeof scan & { byName?: string }) | undefined;
  return {
    templateVersion: CERTIFICATE_TEMPLATE_VERSION,
    paper: 'A4',
    lang: language,
    issuedAt: moment(work),
    practice: practiceOnPaper(work),
    title: home.mayCertify && protocol.issuer.practiceMayCertify
      ? { as: 'certificate', issuer: home.name, scheme: String(home.policy.schemeName ?? t('the screening scheme')), delegatedUntil: (home.policy.delegatedUntil as string | undefined) ?? null }
      : { as: 'statement', issuerOfOriginal: paper.centre, originalAttached: false },
    dog: await dogOnPaper(work),
    transponderReadBy: named ? { name: named.byName ?? t('the practice'), place: home.name } : null,
    identifiedBy: named ? null : t('as written in the order'),
    imagedOn: paper.imagedOn,
    rest: 'sedation',
    earlierOperation: t(OPERATED[operated ?? 'unknown']),
    studies: [paper],
    signed: { by: paper.reader, on: today(work) },
    serial,
    checkAddress: checkAddress(work),
    code: '',
  };
}
