import type { Bag } from './bag.js';
import { isAfter } from './effective.js';
import type { FactOf } from './facts.js';
import type { OrderPicture } from './order-picture.js';
import type { Results } from './study-results.js';

type Letter = FactOf<'letterReleased'>;

export interface Letters {
  /** The first letter with the result that counts now. */
  current: Letter | undefined;
  /** Some result letter, for a result that was not taken back, has gone out. */
  resultOut: boolean;
  /** Of the current result: addressees who are not known to have it. */
  undelivered: string[];
  /** Of those: known not to have it, so that it may go again. */
  bounced: string[];
  /** When the newest letter left, while it goes by mail to all of them and nothing has been heard of it. */
  onItsWay: string | undefined;
  deliveredAt: string | undefined;
  correctionDue: boolean;
  /** The centre sent films back, and no letter has said so since. */
  rejectionUntold: boolean;
  appeal: FactOf<'appealAsked'> | undefined;
  /** An appeal was asked for, open or closed: there is one a study. */
  appealed: boolean;
}

export function pictureLetters(facts: Bag, results: Results, order: OrderPicture): Letters {
  const letters = facts.all('letterReleased').filter((letter) => letter.kind === 'result');
  const current = letters.filter((letter) => letter.result === results.accepted?.result.result);
  const takenBack = new Set(results.withdrawn.map(({ result }) => result.result));
  const mine = results.accepted ? current : [];
  // Nothing can be sent to somebody erased, so nothing is waited for.
  const people = [...new Set(mine.flatMap((letter) => letter.to))].filter((person) => !order.erased.has(person));
  const states = people.map((person) => ({ person, ...deliveryTo(facts, mine, person) }));
  const undelivered = states.filter((state) => !state.delivered);
  const resultOut = letters.some((letter) => letter.result !== undefined && !takenBack.has(letter.result));
  const asked = facts.all('appealAsked').find((appeal) => letters.some((letter) => isAfter(appeal, letter)));
  const open = asked && !facts.has('appealClosed') && !results.secondAccepted && results.accepted && resultOut;
  return {
    current: mine[0],
    resultOut,
    undelivered: undelivered.map((state) => state.person),
    bounced: undelivered.filter((state) => state.bounced).map((state) => state.person),
    onItsWay: undelivered.every((state) => !state.told && order.addressees.some((one) => one.person === state.person && one.channel === 'mail')) ? mine.at(-1)?.at : undefined,
    deliveredAt: states.map((state) => state.at ?? '').sort().at(-1) || mine[0]?.at,
    correctionDue: results.withdrawn.some(({ result, by }) =>
      letters.some((letter) => letter.result === result.result)
      && !facts.all('letterReleased').some((letter) => letter.kind === 'correction' && isAfter(letter, by))),
    rejectionUntold: facts.has('filmsRejected')
      && !facts.all('letterReleased').some((letter) => letter.kind === 'filmsRejected' && isAfter(letter, facts.last('filmsRejected'))),
    appeal: open ? asked : undefined,
    appealed: asked !== undefined,
  };
}

interface Delivery { delivered: boolean; told: boolean; bounced: boolean; at?: string }

function deliveryTo(facts: Bag, letters: Letter[], person: string): Delivery {
  const ids = new Set(letters.map((letter) => letter.letter));
  const told = [...facts.all('letterOutcome'), ...facts.all('letterResolved')]
    .filter((fact) => ids.has(fact.letter) && fact.to === person);
  const arrived = told.find((fact) => (fact.type === 'letterOutcome' ? fact.outcome === 'delivered' : fact.arrived));
  // Delivered is never overwritten by a later bounce.
  if (arrived) return { delivered: true, told: true, bounced: false, at: arrived.at };
  const last = letters.findLast((letter) => letter.to.includes(person));
  const ofLast = told.filter((fact) => fact.letter === last?.letter);
  const bounced = ofLast.some((fact) => fact.type === 'letterResolved' || fact.outcome === 'bounced');
  return { delivered: false, told: ofLast.length > 0, bounced };
}
