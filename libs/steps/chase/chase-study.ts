import { findProtocol } from '#libs/science/protocols/catalogue';
import { maySend } from '#libs/pathway/silence';
import { localDay } from '#libs/pathway/zones';
import { queueActor } from '../record/actor.js';
import { append } from '../record/append.js';
import { shortDay } from '../record/day-words.js';
import { lockOrder } from '../record/order-record.js';
import type { StepDeps } from '../record/step-deps.js';
import { workOn } from '../record/work.js';
import { addToDigest } from './digest.js';
import { escalate } from './escalate.js';

/**
 * One study that is due: claimed by a change that repeats the due condition, so that two workers remind once.
 * Its line goes into the centre's one digest of the day; what was reminded of is a fact of the order.
 */
export async function chaseStudy(deps: StepDeps, order: string, study: string): Promise<void> {
  await deps.db.system('chase a study', async (tx) => {
    const now = deps.clock.now();
    const record = await lockOrder(tx, order);
    if (!record) return;
    const work = workOn(tx, now, queueActor(record.practice), record, deps.publicUrl);
    const standing = work.evaluation.studies[study];
    const centre = standing && record.centres[standing.centre];
    if (!standing?.chase || !centre) return;
    if (standing.chase.act === 'escalate') return escalate(work, standing);
    const answer = maySend({ kind: 'chase', to: standing.centre, study }, record.facts, now.toISOString(), record.rules);
    if (!answer.send) return;
    const day = localDay(now.toISOString(), centre.zone);
    const claimed = await tx.$executeRaw`UPDATE study SET next_day = NULL WHERE id = ${study}::uuid AND act = 'remind' AND next_day <= ${new Date(`${day}T00:00:00Z`)}::date`;
    if (claimed === 0) return;
    const sent = work.facts('packageSent').filter((f) => f.study === study).at(-1);
    const number = String(sent?.detail?.number ?? record.accession);
    const line = `${number}, ${findProtocol(standing.protocol, standing.version)?.name ?? standing.protocol}: ${standing.chase.clock === 'ack' ? 'not acknowledged' : 'no result'}, due ${shortDay(standing.chase.dueDay)}.`;
    const digest = await addToDigest(tx, now, { centre: standing.centre, name: centre.name, email: centre.email, day, line });
    if (!digest) return;
    await append(work, [{ type: 'chaseSent', study, clock: standing.chase.clock, day, digest }], { action: 'chase' });
  });
}
