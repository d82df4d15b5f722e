import { wordsIn } from '#libs/words/words';
import type { StudyView } from '#libs/contracts/screens/order';
import { findProtocol } from '#libs/science/protocols/catalogue';
import { localDay } from '#libs/pathway/zones';
import { t } from '#libs/words/spoken';
import { stepName } from '#libs/register/spoken-names';
import { filmsOf } from '../dispatch/films-of.js';
import type { RoomMarks } from '../quality/room-marks.js';
import type { Work } from '../record/work.js';
import { standingOnPage, type NamedDog } from '../standing/standing-view.js';
import { readingForm } from './reading-words.js';
import { sayDelivery } from './say-delivery.js';
import { conflictOf } from './conflict-view.js';
import { earlierOf } from './earlier-view.js';
import { resultsOf } from './results-view.js';
import type { ScreenSource } from './screen-source.js';

type Facts = Pick<Work, 'facts' | 'evaluation' | 'order' | 'now'>;

/** One study's road from its films to its letters, for the page. */
export function studyView(work: Facts, id: string, names: Record<string, string>, source: Pick<ScreenSource, 'others' | 'deliveries'>, dog: NamedDog, rooms: readonly RoomMarks[]): StudyView {
  const { facts, evaluation, order } = work;
  const of = <T extends { study?: string }>(all: T[]): T[] => all.filter((f) => f.study === id);
  const standing = evaluation.studies[id]!;
  const protocol = findProtocol(standing.protocol, standing.version)!;
  const films = filmsOf(work as Work, id);
  const consent = (purpose: string) => facts('consentGiven').filter((f) => f.purpose === purpose && (f.study === id || (purpose === 'sendAll' && !f.study))).at(-1)?.answer ?? null;
  const acknowledged = new Set(of(facts('acknowledged')).map((f) => f.send));
  const centre = order.centres[standing.centre];
  return {
    id,
    step: standing.step,
    stepLabel: stepName(standing.step),
    protocol: standing.protocol,
    version: standing.version,
    name: protocol.name,
    centre: { id: standing.centre, name: centre?.name ?? 'unknown centre' },
    views: protocol.views.map((v) => ({ view: v.code, name: v.label, required: v.required, accepted: films.some((f) => f.view === v.code && f.accepted) && !standing.missing.includes(v.code), checklist: v.checklist })),
    ...readingForm(protocol, t),
    consent: { study: consent('study'), sendAll: consent('sendAll') },
    packages: of(facts('packageSealed')).map((f) => ({ id: f.package, sealedAt: f.at, films: f.exposures.length, manifest: f.manifest })),
    sends: of(facts('packageSent')).map((f) => ({ id: f.send, at: f.at, centre: names[f.centre] ?? '', outcome: of(facts('sendOutcome')).filter((o) => o.send === f.send).at(-1)?.outcome ?? 'onItsWay', acknowledged: acknowledged.has(f.send), delivery: sayDelivery(source.deliveries[f.send]) })),
    chase: standing.chase ? { clock: standing.chase.clock, dueDay: standing.chase.dueDay, overdue: localDay(work.now.toISOString(), centre?.zone ?? 'UTC') > standing.chase.dueDay, act: standing.chase.act, reminders: standing.chase.sent, cause: standing.chase.cause ?? null } : null,
    results: resultsOf(work, id, rooms),
    conflict: conflictOf(work, id),
    earlier: earlierOf(work, id, source.others),
    rejections: rejectionsOf(work, id, names),
    letters: of(facts('letterReleased')).map((f) => ({ id: f.letter, kind: f.kind, at: f.at, outcomes: f.to.map((to) => ({ to, toName: names[to] ?? '', outcome: outcomeOf(work, f.letter, to) })) })),
    phoneFirst: of(facts('phoneFirstSet')).at(-1)?.until ?? null,
    standing: standingOnPage(order.facts, id, dog, wordsIn('en')),
  };
}

function outcomeOf({ facts }: Facts, letter: string, to: string): string {
  const resolved = facts('letterResolved').find((f) => f.letter === letter && f.to === to);
  if (resolved) return resolved.arrived ? 'delivered' : 'bounced';
  return facts('letterOutcome').filter((f) => f.letter === letter && f.to === to).at(-1)?.outcome ?? 'onItsWay';
}

/** Old films stay with the rejection that named them. */
function rejectionsOf({ facts }: Facts, id: string, names: Record<string, string>): StudyView['rejections'] {
  const sealed = new Map(facts('packageSealed').map((f) => [f.package, f]));
  const taken = facts('exposureTaken');
  return facts('filmsRejected').filter((f) => f.study === id).map((f) => {
    const films = new Set(sealed.get(f.package)?.exposures ?? []);
    return {
      at: f.at, by: (f as { byName?: string }).byName ?? '', package: String(sealed.get(f.package)?.detail?.number ?? ''), views: f.views.map((v) => names[v] ?? v), reasons: f.reasons,
      exposures: taken.filter((t) => films.has(t.exposure) && f.views.includes(t.view)).map((t) => t.exposure),
    };
  });
}
