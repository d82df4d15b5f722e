import type { Bag } from './bag.js';
import { compareFacts, isAfter } from './effective.js';
import type { Fact, FactOf } from './facts.js';
import type { Film } from './film.js';

/** What has been sealed and sent, and what became of it. Ids count within the study only. */
export interface Packages {
  /** The last sealed package that no rejection voids. */
  live: FactOf<'packageSealed'> | undefined;
  /** The live package and its supplements. */
  family: FactOf<'packageSealed'>[];
  everSent: boolean;
  /** The live package's latest send to the study's present centre that was not called back since. */
  sent: FactOf<'packageSent'> | undefined;
  acknowledged: FactOf<'acknowledged'> | undefined;
  lastRejection: FactOf<'filmsRejected'> | undefined;
  rejectedViews: string[];
  /** Sends of the family not known to have arrived. */
  uncertain: { send: FactOf<'packageSent'>; outcome: string; resolved: boolean }[];
  /** Of the family: sealed and not sent to the present centre, or found not to have arrived there. */
  unsent: FactOf<'packageSealed'>[];
  /** Films that came in after sealing and are in no package of the family. */
  unpacked: Film[];
  spoils: (film: Film) => boolean;
}

/** A study that comes back to a centre, or whose owner agrees anew, is sent there anew: what had been sent was called back. */
export const calledBack = (facts: Bag): Fact | undefined => {
  const [changed, told] = [facts.last('centreChanged'), facts.last('centreTold')];
  return isAfter(told, changed) ? told : changed;
};

export function picturePackages(facts: Bag, centre: string, served: Film[]): Packages {
  const sealed = facts.all('packageSealed');
  const rejections = facts.all('filmsRejected');
  const baseOf = (id: string): string => sealed.find((one) => one.package === id)?.supplements ?? id;
  const voided = new Set(rejections.map((rejection) => baseOf(rejection.package)));
  const live = sealed.findLast((one) => one.supplements === undefined && !voided.has(one.package));
  const family = live ? sealed.filter((one) => one === live || one.supplements === live.package) : [];
  const back = calledBack(facts);
  const sends = family.map((one) => ({
    package: one,
    send: facts.after('packageSent', back).findLast((send) => send.package === one.package && send.centre === centre),
  }));
  const sent = sends.find((one) => one.package === live)?.send;
  const packed = new Set(family.flatMap((one) => one.exposures));
  return {
    live, family, sent,
    everSent: facts.has('packageSent'),
    acknowledged: live && acknowledgement(facts, live.package, centre),
    lastRejection: rejections.at(-1),
    rejectedViews: live ? [] : [...new Set(rejections.at(-1)?.views ?? [])],
    uncertain: sends.flatMap(({ send }) => (send ? doubt(facts, send) : [])),
    unsent: sends.filter(({ send }) => !send || lost(facts, send)).map((one) => one.package),
    unpacked: live ? served.filter((film) => !film.disowned && !film.lost && !packed.has(film.id)) : [],
    spoils: (film) => rejections.some((rejection) =>
      rejection.views.includes(film.view)
      && sealed.some((one) => one.package === rejection.package && one.exposures.includes(film.id))),
  };
}

function acknowledgement(facts: Bag, sealed: string, centre: string): FactOf<'acknowledged'> | undefined {
  const sends = facts.all('packageSent').filter((send) => send.package === sealed && send.centre === centre);
  const ids = new Set(sends.map((send) => send.send));
  return facts.after('acknowledged', calledBack(facts)).filter((fact) => ids.has(fact.send)).sort(compareFacts)[0];
}

function doubt(facts: Bag, send: FactOf<'packageSent'>): Packages['uncertain'] {
  if (facts.all('acknowledged').some((fact) => fact.send === send.send)) return [];
  const resolved = facts.latest('sendResolved', (fact) => fact.send === send.send);
  if (resolved) return resolved.arrived ? [] : [{ send, outcome: 'notArrived', resolved: true }];
  const outcomes = facts.all('sendOutcome').filter((fact) => fact.send === send.send);
  // Handed over is never overwritten by a later bounce of the same mail.
  if (outcomes.some((fact) => fact.outcome === 'handedOver')) return [];
  const last = outcomes.at(-1);
  return last ? [{ send, outcome: last.outcome, resolved: false }] : [];
}

function lost(facts: Bag, send: FactOf<'packageSent'>): boolean {
  if (facts.all('acknowledged').some((fact) => fact.send === send.send)) return false;
  return facts.latest('sendResolved', (fact) => fact.send === send.send)?.arrived === false;
}
