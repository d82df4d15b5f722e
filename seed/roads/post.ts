import type { Stated } from '#libs/steps/record/work';
import { datePost } from './date-post.js';
import { factsOf, report, type Road } from './road.js';

interface Written { id: string; kind: string; subjectId: string | null; personId: string | null }

/**
 * What the worker does with mail, for mail of the past: everything written so far has come, a minute later. The
 * outcome is stated as the worker states it. What is to be sent at a later time waits on.
 */
export async function deliverPost(road: Road, writtenBefore: Date = new Date('9999-01-01')): Promise<void> {
  await datePost(road);
  const { driver, clock, order } = road;
  clock.advance({ minutes: 1 });
  const now = clock.now();
  const sent = await driver.db.system('filling in the demo', async (tx) => {
    const rows = await tx.$queryRaw<Written[]>`
      UPDATE message SET state = 'delivered', claimed_at = COALESCE(not_before, ${now}), done_at = COALESCE(not_before, ${now}), subject = ''
      WHERE order_id = ${order}::uuid AND state = 'waiting' AND (not_before IS NULL OR not_before <= ${now}) AND created_at < ${writtenBefore}
      RETURNING id, kind, subject_id AS "subjectId", person_id AS "personId"`;
    await tx.$executeRaw`UPDATE outbox SET relayed_at = ${now} WHERE job = 'send-message' AND payload->>'message' = ANY(${rows.map((r) => r.id)}) AND relayed_at IS NULL`;
    return rows;
  });
  const stated = sent.flatMap((message) => outcomeOf(road, message));
  if (stated.length > 0) await report(road, 'deliverPost', stated);
}

function outcomeOf(road: Road, { kind, subjectId, personId }: Written): Stated[] {
  if (kind === 'package') {
    const send = factsOf(road, 'packageSent').find((f) => f.send === subjectId)!;
    return [{ type: 'sendOutcome', study: send.study, send: send.send, outcome: 'handedOver' }];
  }
  if (kind !== 'result' && kind !== 'correction') return [];
  const letter = factsOf(road, 'letterReleased').find((f) => f.letter === subjectId)!;
  return [{ type: 'letterOutcome', study: letter.study, letter: letter.letter, to: personId!, outcome: 'delivered' }];
}
