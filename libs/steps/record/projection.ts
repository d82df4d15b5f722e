import type { Evaluation } from '#libs/pathway/evaluation';
import type { Fact, FactOf } from '#libs/pathway/facts';
import { firstWaitedFor } from '#libs/pathway/routine';
import { isOpenStudy, isOpenVisit } from '#libs/pathway/steps';
import { wakeAt } from '#libs/pathway/wake-at';
import type { Work } from './work.js';

/** Rewrites the rows that lists and sweeps query; a cache of the facts, never the truth. */
export async function storeProjection({ tx, order, now }: Work, e: Evaluation): Promise<void> {
  const practice = order.practice;
  const visits = Object.values(e.visits).map((v) => ({ id: v.id, practice_id: v.where ?? practice, day: v.day ?? null, start: v.start ?? null, step: v.step, first_hold: v.holds[0]?.code ?? null, open: isOpenVisit(v.step) }));
  const studies = Object.values(e.studies).map((s) => ({
    id: s.id, practice_id: practice, protocol: s.protocol, version: s.version, centre_id: s.centre, step: s.step, since: s.since, first_hold: s.holds[0]?.code ?? null,
    clock: s.chase?.clock ?? null, due_day: s.chase?.dueDay ?? null, next_day: s.chase?.nextDay ?? null, act: s.chase?.act ?? null, cause: s.chase?.cause ?? null,
    imaged_not_sent: e.order.imagedNotSent.includes(s.id), open: isOpenStudy(s.step),
  }));
  const closed = [...visits, ...studies].every((row) => !row.open) && e.order.step !== 'empty' && e.order.step !== 'none' && owesNothing(e);
  const { evaluation, wake } = { evaluation: JSON.stringify(e), wake: wakeAt(order.facts, now.toISOString(), order.rules) };
  await tx.$executeRaw`WITH
    v AS (INSERT INTO visit (id, order_id, practice_id, day, start, step, first_hold, open)
      SELECT id, ${order.id}::uuid, practice_id, day, start, step, first_hold, open FROM jsonb_to_recordset(${JSON.stringify(visits)}::jsonb)
        AS r(id uuid, practice_id uuid, day date, start text, step text, first_hold text, open boolean)
      ON CONFLICT (id) DO UPDATE SET practice_id = excluded.practice_id, day = excluded.day, start = excluded.start, step = excluded.step, first_hold = excluded.first_hold, open = excluded.open),
    s AS (INSERT INTO study (id, order_id, practice_id, protocol, version, centre_id, step, since, first_hold, clock, due_day, next_day, act, cause, imaged_not_sent, open)
      SELECT id, ${order.id}::uuid, practice_id, protocol, version, centre_id, step, since, first_hold, clock, due_day, next_day, act, cause, imaged_not_sent, open FROM jsonb_to_recordset(${JSON.stringify(studies)}::jsonb)
        AS r(id uuid, practice_id uuid, protocol text, version text, centre_id uuid, step text, since timestamptz, first_hold text, clock text, due_day date, next_day date, act text, cause text, imaged_not_sent boolean, open boolean)
      ON CONFLICT (id) DO UPDATE SET version = excluded.version, centre_id = excluded.centre_id, step = excluded.step, since = excluded.since, first_hold = excluded.first_hold, clock = excluded.clock, due_day = excluded.due_day,
        next_day = excluded.next_day, act = excluded.act, cause = excluded.cause, imaged_not_sent = excluded.imaged_not_sent, open = excluded.open),
    p AS (UPDATE package_access a SET state = r.state, due_day = r.due_day FROM jsonb_to_recordset(${JSON.stringify(sentPackages(order.facts, e))}::jsonb) AS r(package uuid, centre uuid, state text, due_day date)
      WHERE a.package_id = r.package AND a.centre_id = r.centre)
    UPDATE orders SET version = ${order.version}, step = ${e.order.step}, first_hold = ${firstHold(e)}, evaluation = ${evaluation}::jsonb, wake_at = ${wake ? new Date(wake) : null}, closed = ${closed}
    WHERE id = ${order.id}::uuid`;
}

/** What each centre's list says about the packages it was sent. */
function sentPackages(facts: readonly Fact[], e: Evaluation): { package: string; centre: string; state: string; due_day: string | null }[] {
  const has = (test: (f: Fact) => boolean) => facts.some(test);
  return facts.filter((f): f is FactOf<'packageSent'> => f.type === 'packageSent').map((sent) => {
    const state = has((f) => f.type === 'filmsRejected' && f.send === sent.send) ? 'rejected'
      : has((f) => f.type === 'resultArrived' && f.study === sent.study && f.rec >= sent.rec) && e.studies[sent.study]?.step !== 'appealed' ? 'read'
        : has((f) => f.type === 'acknowledged' && f.send === sent.send) ? 'acknowledged' : 'new';
    return { package: sent.package, centre: sent.centre, state, due_day: e.studies[sent.study]?.chase?.dueDay ?? null };
  });
}

/** The hold to lift first, of those that a person is waited for: at a visit that is open, else of a study, else of the order. */
function firstHold(e: Evaluation): string | null {
  const visits = Object.values(e.visits).filter((v) => isOpenVisit(v.step));
  for (const standing of [...visits, ...Object.values(e.studies), e.order]) {
    const hold = firstWaitedFor(standing.holds);
    if (hold) return hold.code;
  }
  return null;
}

/** Owed to somebody even when every road has ended. */
const OWED: ReadonlySet<string> = new Set(['CENTRE_TO_TELL', 'NOTE_NOT_TAKEN', 'CORRECTION_DUE', 'CASE_OWNER_MISSING']);
const owesNothing = (e: Evaluation): boolean => !e.order.allHolds.some((code) => OWED.has(code));
