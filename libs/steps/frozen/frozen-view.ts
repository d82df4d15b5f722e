import type { FrozenView } from '#libs/contracts/screens/frozen';
import type { Fact } from '#libs/pathway/facts';
import { happenedLine } from '../order-screen/happened.js';
import type { Work } from '../record/work.js';

type Seen = Pick<Work, 'facts' | 'evaluation' | 'order'>;

/** What stands at the head of a record beside which nothing calls; null where nobody died and nobody was harmed. */
export function frozenView(work: Seen, names: Record<string, string>): FrozenView | null {
  const { facts, evaluation, order } = work;
  const standing = <F extends Fact>(all: F[]): F[] => all.filter((f) => !facts('factStruck').some((s) => s.fact === f.id));
  // One entry that says "in our care" counts, whoever made another.
  const deaths = standing(facts('dogDied'));
  const death = deaths.find((f) => f.inCare) ?? deaths[0];
  const harm = standing(facts('harmRecorded'))[0];
  if (!death && !harm) return null;
  const speaker = facts('caseOwnerNamed').at(-1);
  return {
    death: death ? { day: death.day, at: death.at, inCare: death.inCare, cause: death.cause } : null,
    harm: harm ? { at: harm.at, what: harm.what } : null,
    caseOwner: speaker ? { id: speaker.person, name: names[speaker.person] ?? String(speaker.detail?.name ?? '') } : null,
    legalHold: evaluation.order.legalHold,
    late: order.facts.filter((f) => evaluation.order.late.includes(f.id)).map((f) => ({ at: f.at, rec: f.rec, by: f.byName, what: f.type === 'eventRecorded' ? f.what : happenedLine(f, names) })),
    readings: facts('readingTaken').length,
    batches: new Set(facts('drugRecorded').map((f) => f.batch)).size,
  };
}
