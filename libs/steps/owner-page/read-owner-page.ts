import { questions, questionWords, type Joint } from '#libs/contracts/common';
import type { OwnerPage } from '#libs/contracts/screens/owner';
import type { Prices } from '#libs/contracts/register';
import { addDays } from '#libs/pathway/days';
import { asLanguage } from '#libs/words/languages';
import type { Said } from '#libs/words/said';
import { wordsIn, type Words } from '#libs/words/words';
import { evaluate } from '#libs/pathway/evaluate';
import { isOpenStudy, isOpenVisit } from '#libs/pathway/steps';
import type { Fact } from '#libs/pathway/facts';
import { ownersSentence } from '#libs/pathway/words';
import { localDay } from '#libs/pathway/zones';
import { findProtocol } from '#libs/science/protocols/catalogue';
import { dogsResult } from '#libs/science/protocols/dogs-result';
import type { JointReading, Protocol } from '#libs/science/protocols/types';
import { saidValue } from '#libs/science/protocols/value';
import { dogOfRow, type DogRow } from '#libs/register/dog-of-row';
import { questionsFor, type Asked } from '../booking/questions-for.js';
import { jointName } from '../order-screen/reading-words.js';
import { visitEstimateView } from '../order-screen/visit-view.js';
import { withRules, type OrderRow } from '../record/order-record.js';
import type { StepDeps } from '../record/step-deps.js';
import { notFound } from '../record/step-error.js';
import type { Work } from '../record/work.js';
import { jointsOf } from '../result/joints-of.js';
import { standingOnPage, type NamedDog } from '../standing/standing-view.js';
import { documentName } from '../report/document-name.js';
import { partyOf, type Side } from '../order/transfer-parties.js';
import { consentsOf, type OwnerText } from './owner-consents-view.js';
import { OWNER } from './owner-sql.js';
import { lastVisit, ownerKnots, ownerStatus } from './owner-status.js';
import type { Owner } from './owner.js';
import { reachableWords } from './reachable-words.js';
import { isOfSide, pageOfSide } from './sides-of-a-sale.js';

interface Row { record: OrderRow; dog: DogRow; texts: OwnerText[]; documents: { id: string; kind: string; name: string; named: Said | null; subject: string | null; printed: boolean; at: string }[]; prices: Prices | null; language: string | null }

/** Asked of the owner and nobody else. */
const TO_DO = new Set(['ESTIMATE_NOT_ACCEPTED', 'ANSWERS_MISSING', 'ANSWER_UNKNOWN', 'CONSENT_SEDATION_MISSING', 'EMERGENCY_WISHES_MISSING', 'CONSENT_STUDY_MISSING', 'CONSENT_SEND_ALL_MISSING', 'TRANSFER_NOT_AGREED']);

export async function readOwnerPage(deps: StepDeps, owner: Owner): Promise<OwnerPage> {
  const [row] = await deps.db.read<Row>({ practice: owner.practice }, OWNER, [owner.order, owner.person, owner.practice]);
  if (!row) throw notFound();
  return ownerPage(row, owner, deps.clock.now());
}

export function ownerPage(row: Row, owner: Owner, now: Date): OwnerPage {
  return pageOfSide(wholePage(row, owner, now));
}

function wholePage(row: Row, owner: Owner, now: Date): OwnerPage {
  const t = wordsIn(asLanguage(row.language));
  const order = withRules(row.record);
  const evaluation = evaluate(order.facts, now.toISOString(), order.rules);
  const all: Work['facts'] = (type) => order.facts.filter((f): f is never => f.type === type);
  const side = partyOf({ facts: all }, owner.person);
  // Where every owner signs, each sees what they themselves have answered.
  const named = all('signersNamed').at(-1);
  const apart = named?.rule === 'all' && named.signers.includes(owner.person);
  const seen = (f: Fact) => (!side || isOfSide(side, owner.person, f)) && !(apart && f.type === 'consentGiven' && (f.for ?? f.signer) !== owner.person);
  const facts: Work['facts'] = (type) => all(type).filter(seen);
  const work = { order, evaluation, facts, now };
  const dog = dogOfRow(row.dog);
  const practice = order.practices[order.practice]!;
  const visit = lastVisit(evaluation);
  const open = visit && isOpenVisit(visit.step) ? visit : undefined;
  const holds = [...Object.values(evaluation.visits), ...Object.values(evaluation.studies).filter((s) => isOpenStudy(s.step)), evaluation.order].flatMap((s) => s.holds);
  const naming = { names: Object.fromEntries(questions.map((q) => [q, t(questionWords[q])])), zone: practice.zone };
  const worded = holds.map((h) => ({ code: h.code as string, words: ownersSentence(h, naming, t) })).filter((h): h is { code: string; words: string } => h.words !== null);
  const once = [...new Map(worded.map((h) => [h.words, h])).values()];
  return {
    order: order.id,
    language: t.language,
    accession: order.accession,
    version: order.version,
    dog: { name: dog.callName, breed: dog.breed, sex: dog.sex, transponder: dog.identifiers.find((i) => !i.until)?.shown ?? 'none' },
    practice: { name: practice.name, address: practice.address, phone: practice.phone, zone: practice.zone },
    status: ownerStatus(evaluation, dog.callName, t),
    knots: side?.party === 'buyer' && !open ? [] : ownerKnots(evaluation),
    toDo: once.filter((h) => TO_DO.has(h.code) && (h.code !== 'TRANSFER_NOT_AGREED' || !side?.said)),
    waiting: once.filter((h) => !TO_DO.has(h.code)).map((h) => h.words),
    visit: open?.day && open.start ? { id: open.id, day: open.day, start: open.start, advice: adviceOf(work, open.id, row.texts, t) } : null,
    estimate: open ? estimateFor(work, open.id, row.prices) : null,
    questions: open ? questionsOf(work, open.id, dog, t) : [],
    consents: consentsOf(work, open?.id, row.texts, t),
    results: Object.values(evaluation.studies).filter((s) => s.step === 'released' || s.step === 'reported').flatMap((s) => resultFor(work, s.id, dog, t)),
    documents: row.documents.filter((d) => mayRead(work, d, owner, side)).map((d) => ({ id: d.id, name: documentName(d, t), at: d.at })),
    transfer: side ? { party: side.party, day: side.sale.day, said: side.said, agreed: side.agreed } : null,
    letters: { anyTime: all('letterTimeChosen').findLast((f) => f.person === owner.person)?.anyTime ?? false, reachable: reachableWords(order.rules.practices[order.practice]!, t) },
    signer: { person: owner.person, name: owner.name, role: 'owner' },
  };
}

type Seen = Pick<Work, 'facts' | 'evaluation' | 'order'>;

/** A letter that was addressed to this person. */
const owned = ({ facts }: Seen, letter: string | null, owner: Owner): boolean => facts('letterReleased').some((f) => f.letter === letter && f.to.includes(owner.person));

/** A letter is its addressees', a consent its signer's; of the rest, a sale leaves each side its own time. */
function mayRead(work: Seen, d: Row['documents'][number], owner: Owner, side: Side | undefined): boolean {
  if (d.kind === 'letter') return owned(work, d.subject, owner);
  if (d.kind === 'consentCopy') return d.subject === owner.person;
  if (d.kind === 'certificate') return d.printed && (!side || work.facts('letterReleased').some((f) => f.study === d.subject));
  return !side || (side.party === 'buyer') === (d.at >= side.sale.rec);
}

function adviceOf({ facts }: Seen, visit: string, texts: OwnerText[], t: Words): NonNullable<OwnerPage['visit']>['advice'] {
  const advice = facts('visitBooked').filter((f) => f.visit === visit).map((f) => f.detail?.advice).findLast((a) => typeof a === 'string');
  const text = texts.find((each) => each.id === advice);
  return text ? { title: text.title, body: text.body, language: asLanguage(text.language), approvedBy: text.by ?? t('a vet of the practice') } : null;
}

function estimateFor(work: Seen, visit: string, prices: Prices | null): OwnerPage['estimate'] {
  const estimate = visitEstimateView(work, visit, prices);
  return estimate ? { lines: estimate.lines, totalMinor: estimate.totalMinor, currency: estimate.currency, accepted: estimate.accepted !== null } : null;
}

function questionsOf({ facts }: Seen, visit: string, dog: Asked, t: Words): OwnerPage['questions'] {
  const given = facts('answersGiven').filter((f) => f.visit === visit);
  return questionsFor(dog).map(({ question, words }) => ({ question, words: t(words), answer: given.map((f) => f.answers[question]).filter((a) => a !== undefined).at(-1) ?? null }));
}

function appealUntil({ rules }: Seen['order'], id: string, letterAt: string): string {
  const centre = rules.centres[id];
  return addDays(localDay(letterAt, centre?.calendar.zone ?? 'UTC'), centre?.appealDays ?? 0);
}

function resultFor({ facts, evaluation, order }: Seen, study: string, dog: NamedDog, t: Words): OwnerPage['results'] {
  const letter = facts('letterReleased').filter((f) => f.study === study && f.kind === 'result').at(-1);
  const arrived = facts('resultArrived').find((f) => f.result === letter?.result);
  const standing = evaluation.studies[study]!;
  const protocol = findProtocol(standing.protocol, standing.version);
  if (!arrived || !protocol) return [];
  const joints = jointsOf(facts, arrived);
  const found = { study: t.known(protocol.deskName), words: joints.map((j) => jointInWords(protocol, j, t)), dog: t.said(dogsResult(protocol, joints as JointReading[]).said), readOn: arrived.at.slice(0, 10), standing: standingOnPage(facts('letterReleased'), study, dog, t) };
  return [{ ...found, appeal: standing.next.includes('askAppeal') ? { study, result: arrived.result, until: appealUntil(order, standing.centre, letter!.at) } : null }];
}

const jointInWords = (protocol: Protocol, joint: Joint, t: Words): string => {
  const found = joint.value === undefined
    ? t('not readable: {reason}', { reason: t.known(protocol.noValue.find((r) => r.code === joint.reason)?.words ?? 'no reason was given') })
    : t.said(saidValue(protocol.value, joint.value));
  return `${jointName(protocol, joint.joint, t)}: ${found}`;
};
