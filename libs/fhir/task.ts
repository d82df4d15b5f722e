import type { Task } from '@medplum/fhirtypes';
import type { FactOf } from '#libs/pathway/facts';
import type { StudyPicture } from '#libs/pathway/study-picture';
import { named, numberSystem, ownConcept, reference } from './codes.js';
import { reportVersions } from './report-versions.js';
import type { FhirOrder } from './source.js';

type Told = { status: NonNullable<Task['status']>; words: [code: string, text: string]; last: string };

/** Each sealed package and what became of it on its way to the centre. */
export const tasks = (order: FhirOrder, study: StudyPicture): Task[] => study.facts.all('packageSealed').map((sealed) => task(order, study, sealed));

function task(order: FhirOrder, study: StudyPicture, sealed: FactOf<'packageSealed'>): Task {
  const { dog, base, centres, practices, picture, evaluation } = order;
  const { status, words, last } = becameOf(study, sealed);
  const films = picture.films.filter((film) => sealed.exposures.includes(film.id));
  const visits = [...new Set(films.map((film) => film.visit))];
  const due = study.packages.live === sealed ? evaluation.studies[study.id]?.chase?.dueDay : undefined;
  const number = typeof sealed.detail?.number === 'string' ? sealed.detail.number : undefined;
  return {
    resourceType: 'Task',
    id: sealed.package,
    meta: { lastUpdated: order.changed },
    ...(number && { identifier: [{ system: numberSystem(base, 'package'), value: number }] }),
    basedOn: [reference('ServiceRequest', study.id)],
    status,
    businessStatus: ownConcept('package-state', ...words),
    intent: 'order',
    code: ownConcept('task', 'read', 'Read the films and answer'),
    focus: reference('ServiceRequest', study.id),
    for: reference('Patient', dog.id, dog.callName),
    authoredOn: sealed.at,
    lastModified: last,
    requester: named(practices[picture.order.practice]?.name ?? 'the practice'),
    owner: named(centres[study.centre]?.name ?? 'the centre'),
    ...(due && { restriction: { period: { end: due } } }),
    input: [
      ...visits.map((visit) => ({ type: { text: 'Films' }, valueReference: reference('ImagingStudy', visit) })),
      { type: { text: 'SHA-256 of the manifest' }, valueString: sealed.manifest },
    ],
    ...(status === 'completed' && { output: [{ type: { text: 'Report' }, valueReference: reference('DiagnosticReport', study.id) }] }),
  };
}

function becameOf(study: StudyPicture, sealed: FactOf<'packageSealed'>): Told {
  const { facts } = study;
  const sends = facts.all('packageSent').filter((fact) => fact.package === sealed.package);
  const send = sends.at(-1);
  const rejected = facts.latest('filmsRejected', (fact) => fact.package === sealed.package);
  if (rejected) return { status: 'rejected', words: ['filmsRejected', 'The centre sent the films back'], last: rejected.at };
  if (!send) return study.step === 'ended' ? { status: 'cancelled', words: ['ended', 'The study ended'], last: study.since } : { status: 'ready', words: ['sealed', 'Sealed, not sent'], last: sealed.at };
  const version = reportVersions(study).findLast((one) => one.accepted && one.by.rec > send.rec);
  if (version) return { status: 'completed', words: ['answered', 'Answered'], last: version.by.at };
  if (study.step === 'ended') return { status: 'cancelled', words: ['ended', 'The study ended'], last: study.since };
  const acknowledged = facts.latest('acknowledged', (fact) => sends.some((one) => one.send === fact.send));
  if (acknowledged) return { status: 'received', words: ['acknowledged', 'The centre has it'], last: acknowledged.at };
  const resolved = facts.latest('sendResolved', (fact) => fact.send === send.send);
  const outcome = facts.latest('sendOutcome', (fact) => fact.send === send.send);
  if (resolved) return resolved.arrived ? { status: 'requested', words: ['arrived', 'Arrived, not acknowledged'], last: resolved.at } : { status: 'failed', words: ['notArrived', 'Did not arrive'], last: resolved.at };
  if (outcome?.outcome === 'bounced' || outcome?.outcome === 'failed') return { status: 'failed', words: [outcome.outcome, 'Could not be delivered'], last: outcome.at };
  if (outcome?.outcome === 'unknown') return { status: 'on-hold', words: ['unknown', 'It is not known whether it arrived'], last: outcome.at };
  return { status: 'requested', words: ['sent', 'Sent'], last: send.at };
}
