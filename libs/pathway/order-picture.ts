import type { Bag } from './bag.js';
import type { Collected } from './collect.js';
import { lack, lastWord } from './consent.js';
import { compareFacts, isAfter } from './effective.js';
import type { Ignored } from './evaluation.js';
import type { Addressee, Birth, Fact, FactOf } from './facts.js';
import type { PracticeRules, Rules } from './rules.js';

/** What the facts say of the order as a whole. */
export interface OrderPicture {
  id: string;
  facts: Bag;
  practice: string;
  practiceRules: PracticeRules | undefined;
  zone: string;
  birth: Birth | undefined;
  numbers: string[];
  addressees: Addressee[];
  /** The fact that named them last. */
  addressedBy: Fact | undefined;
  payer: string | undefined;
  erased: Set<string>;
  /** All of them sign; none named: any owner's yes is enough. */
  signers: string[];
  /** Who wants letters at any time. */
  anyTime: Set<string>;
  referral: FactOf<'referralOffered'> | undefined;
  transfer: FactOf<'dogTransferred'> | undefined;
  transferAgreed: boolean;
  closing: FactOf<'practiceClosing'> | undefined;
  cancelled: FactOf<'orderCancelled'> | undefined;
  died: FactOf<'dogDied'> | undefined;
  /** Death or harm not yet lifted by a vet. */
  silentFor: { death: boolean; harm: boolean };
  frozenAt: string | null;
  caseOwner: string | undefined;
  legalHold: boolean;
  statistics: boolean;
  ignored: Ignored[];
}

export function pictureOrder(collected: Collected, rules: Rules): OrderPicture {
  const facts = collected.order;
  const { opened } = collected;
  const ignored: Ignored[] = [];
  const practice = currentPractice(facts, opened?.practice ?? '', ignored);
  const practiceRules = rules.practices[practice];
  const addressedBy = facts.last('addresseesConfirmed') ?? opened;
  const transfer = facts.last('dogTransferred');
  const agreed = new Set(facts.after('transferAgreed', transfer).map((fact) => fact.party));
  const died = facts.first('dogDied');
  const frozenAt = firstFreeze(facts);
  const hold = legalHold(facts, ignored);
  return {
    id: opened?.order ?? '',
    facts, practice, practiceRules, addressedBy, transfer, died, frozenAt, ignored,
    zone: practiceRules?.zone ?? 'UTC',
    birth: facts.latest('dogRestated', (fact) => fact.birth !== undefined)?.birth ?? opened?.birth,
    numbers: facts.latest('dogRestated', (fact) => fact.numbers !== undefined)?.numbers ?? opened?.numbers ?? [],
    addressees: addressedBy?.addressees ?? [],
    payer: facts.last('payerNamed')?.payer,
    erased: hold.erased,
    signers: signersOf(facts, transfer, hold.erased),
    anyTime: new Set(facts.all('letterTimeChosen').map((fact) => fact.person).filter((person) => facts.latest('letterTimeChosen', (fact) => fact.person === person)?.anyTime)),
    referral: openReferral(facts, ignored),
    transferAgreed: agreed.has('seller') && agreed.has('buyer'),
    closing: facts.latest('practiceClosing', (fact) => fact.closing === practice),
    cancelled: facts.first('orderCancelled'),
    silentFor: silence(facts, frozenAt),
    caseOwner: facts.last('caseOwnerNamed')?.person,
    legalHold: hold.stands,
    statistics: lack(lastWord('statistics', facts), undefined) === null,
  };
}

/** Owners who have sold the dog, or were erased, sign no more. */
function signersOf(facts: Bag, transfer: Fact | undefined, erased: Set<string>): string[] {
  const named = facts.last('signersNamed');
  if (named?.rule !== 'all' || isAfter(transfer, named)) return [];
  return named.signers.filter((person) => !erased.has(person));
}

function currentPractice(facts: Bag, first: string, ignored: Ignored[]): string {
  let practice = first;
  for (const handed of facts.all('handedOver')) {
    if (!handed.ownerAgreed) ignored.push(leftOut(handed, 'NOT_AGREED'));
    else if (handed.from === practice) practice = handed.to;
  }
  return practice;
}

function openReferral(facts: Bag, ignored: Ignored[]): FactOf<'referralOffered'> | undefined {
  const answers = facts.all('referralAnswered').filter((answer) => {
    const offer = facts.latest('referralOffered', (fact) => fact.referral === answer.referral);
    const refused = answer.answer === 'accepted' && !offer?.ownerAgreed;
    if (refused) ignored.push(leftOut(answer, 'NOT_AGREED'));
    return !refused;
  });
  const answered = new Set(answers.map((answer) => answer.referral));
  return facts.latest('referralOffered', (fact) => !answered.has(fact.referral));
}

/** Several records of a death or a harm are joined: a death in our care counts even where another entry says otherwise. */
function freezes(facts: Bag): Fact[] {
  return [...facts.all('dogDied').filter((fact) => fact.inCare), ...facts.all('harmRecorded')].sort(compareFacts);
}

const firstFreeze = (facts: Bag): string | null => freezes(facts)[0]?.at ?? null;

function silence(facts: Bag, frozenAt: string | null): { death: boolean; harm: boolean } {
  const named = facts.first('caseOwnerNamed');
  const lifted = facts.latest('silenceLifted', (fact) => frozenAt === null || (named !== undefined && isAfter(fact, named)));
  const stands = (last: Fact | undefined): boolean => last !== undefined && !isAfter(lifted, last);
  return { death: stands(facts.last('dogDied')), harm: stands(facts.last('harmRecorded')) };
}

function legalHold(facts: Bag, ignored: Ignored[]): { stands: boolean; erased: Set<string> } {
  const turns: Fact[] = [...facts.all('legalHoldSet'), ...facts.all('legalHoldLifted'), ...facts.all('personErased'), ...freezes(facts)];
  const erased = new Set<string>();
  let stands = false;
  for (const turn of turns.sort(compareFacts)) {
    if (turn.type === 'legalHoldLifted') {
      if (turn.second === turn.by) ignored.push(leftOut(turn, 'SECOND_PERSON'));
      else stands = false;
    } else if (turn.type === 'personErased') {
      if (stands) ignored.push(leftOut(turn, 'LEGAL_HOLD'));
      else erased.add(turn.person);
    } else {
      stands = true;
    }
  }
  return { stands, erased };
}

const leftOut = (fact: Fact, reason: Ignored['reason']): Ignored => ({ fact: fact.id, type: fact.type, reason });
