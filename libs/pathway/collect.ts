import { Bag } from './bag.js';
import type { Ignored } from './evaluation.js';
import type { Fact, FactOf, FactType } from './facts.js';

export interface CollectedVisit { id: string; opened: FactOf<'visitOpened'>; facts: Bag; exposures: CollectedExposure[] }
export interface CollectedStudy { id: string; added: FactOf<'studyAdded'>; facts: Bag }
export interface CollectedExposure { id: string; taken: FactOf<'exposureTaken'>; facts: Bag }

export interface Collected {
  opened: FactOf<'orderOpened'> | undefined;
  order: Bag;
  visits: Map<string, CollectedVisit>;
  studies: Map<string, CollectedStudy>;
  exposures: Map<string, CollectedExposure>;
  ignored: Ignored[];
}

/**
 * Puts every fact with the thing it is about. Things come first and what is said about them second, so that an
 * entry from a tablet whose clock runs early still finds its parent.
 */
export function collect(facts: readonly Fact[]): Collected {
  const order: Collected = {
    opened: facts.find((fact) => fact.type === 'orderOpened'),
    order: new Bag(), visits: new Map(), studies: new Map(), exposures: new Map(), ignored: [],
  };
  if (!order.opened) {
    order.ignored = facts.map((fact) => ignoredFor(fact, 'NO_ORDER'));
    return order;
  }
  // Each round finds the parents that the next one needs: exposures need visits, sends need packages.
  const rounds: Fact[][] = [[], [], [], []];
  for (const fact of facts) rounds[round(fact.type)]?.push(fact);
  for (const fact of rounds.flat()) {
    const bags = subjects(order, fact);
    if (bags.length === 0) order.ignored.push(ignoredFor(fact, 'NO_SUBJECT'));
    for (const bag of bags) bag.add(fact);
  }
  return order;
}

const ignoredFor = (fact: Fact, reason: Ignored['reason']): Ignored => ({ fact: fact.id, type: fact.type, reason });

function round(type: FactType): number {
  if (type === 'studyAdded' || type === 'visitOpened' || type === 'referralOffered') return 0;
  if (type === 'exposureTaken' || type === 'packageSealed' || type === 'resultArrived') return 1;
  if (type === 'packageSent' || type === 'letterReleased') return 2;
  return 3;
}

/** The bags that a fact belongs in; none where it speaks of something unknown. */
function subjects(order: Collected, fact: Fact): Bag[] {
  switch (fact.type) {
    case 'studyAdded': {
      const study = { id: fact.study, added: fact, facts: new Bag() };
      order.studies.set(fact.study, study);
      return [study.facts];
    }
    case 'visitOpened': {
      const visit = { id: fact.visit, opened: fact, facts: new Bag(), exposures: [] };
      order.visits.set(fact.visit, visit);
      return [visit.facts];
    }
    case 'exposureTaken': {
      const visit = order.visits.get(fact.visit);
      if (!visit || order.exposures.has(fact.exposure)) return [];
      const exposure = { id: fact.exposure, taken: fact, facts: new Bag() };
      order.exposures.set(fact.exposure, exposure);
      visit.exposures.push(exposure);
      return [exposure.facts];
    }
    case 'imagesLost':
      return fact.exposures.flatMap((id) => order.exposures.get(id)?.facts ?? []);
    case 'verdictGiven':
      return order.exposures.has(fact.exposure) ? one(order.studies.get(fact.study)) : [];
    case 'roomLogged': case 'filmMarked': case 'filmSized': case 'exposureAssigned': case 'exposureDisowned': case 'imageChecked':
      return one(order.exposures.get(fact.exposure));
    case 'consentGiven': case 'consentWithdrawn':
      if (fact.purpose === 'sedation') return one(order.visits.get(fact.visit ?? ''));
      if (fact.purpose === 'study') return one(order.studies.get(fact.study ?? ''));
      if (fact.purpose === 'sendAll' && fact.study !== undefined) return one(order.studies.get(fact.study));
      return [order.order];
    case 'studyLeftOut': case 'fitnessChecked':
      return order.studies.has(fact.study) ? one(order.visits.get(fact.visit)) : [];
    case 'referralAnswered':
      return order.order.all('referralOffered').some((offer) => offer.referral === fact.referral) ? [order.order] : [];
    case 'packageSent':
      return studyThat(order, fact.study, (bag) => bag.all('packageSealed').some((p) => p.package === fact.package));
    case 'filmsRejected':
      return studyThat(order, fact.study, (bag) => bag.all('packageSealed').some((p) => p.package === fact.package));
    case 'sendOutcome': case 'sendResolved': case 'acknowledged':
      return studyThat(order, fact.study, (bag) => bag.all('packageSent').some((s) => s.send === fact.send));
    case 'letterOutcome': case 'letterResolved':
      return studyThat(order, fact.study, (bag) => bag.all('letterReleased').some((l) => l.letter === fact.letter));
    case 'resultKeyed': case 'resultChecked': case 'resultExplained': case 'resultRefused':
    case 'resultAccepted': case 'resultWithdrawn': case 'appealAsked':
      return studyThat(order, fact.study, (bag) => bag.all('resultArrived').some((r) => r.result === fact.result));
    case 'conflictSettled':
      return studyThat(order, fact.study, (bag) => bag.all('resultArrived').some((r) => r.result === fact.keep));
    default:
      if ('visit' in fact && typeof fact.visit === 'string') return one(order.visits.get(fact.visit));
      if ('study' in fact && typeof fact.study === 'string') return one(order.studies.get(fact.study));
      return [order.order];
  }
}

const one = (thing: { facts: Bag } | undefined): Bag[] => (thing ? [thing.facts] : []);

function studyThat(order: Collected, id: string, knows: (bag: Bag) => boolean): Bag[] {
  return one(order.studies.get(id)).filter(knows);
}
