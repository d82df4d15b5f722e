import type { WaitingList } from '#libs/contracts/waiting';
import { audit } from '#libs/platform/audit/audit';
import type { Tx } from '#libs/platform/database/db';
import { findProtocol } from '#libs/science/protocols/catalogue';
import type { Actor } from '../record/actor.js';
import { shortDay } from '../record/day-words.js';
import type { StepDeps } from '../record/step-deps.js';

type Row = WaitingList['rows'][number];
interface Stored extends Omit<Row, 'studies' | 'earlier'> { studies: { protocol: string; version: string }[]; earlier: { day: string; start: string; state: string }[] }

const LIST = `SELECT e.id AS entry, o.id AS order, o.accession, d.call_name AS dog, p.name AS owner, COALESCE(p.phone, '') AS phone,
  to_char(v.day, 'YYYY-MM-DD') AS day, v.start, to_char(e.from_day, 'YYYY-MM-DD') AS "fromDay", to_char(e.created_at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS"Z"') AS since,
  COALESCE((SELECT jsonb_agg(jsonb_build_object('protocol', s.protocol, 'version', s.version)) FROM study s WHERE s.order_id = o.id AND s.open), '[]') AS studies,
  (SELECT jsonb_build_object('day', f.slot->>'day', 'start', f.slot->>'start', 'expiresAt', to_char(f.expires_at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS"Z"')) FROM slot_offer f WHERE f.entry_id = e.id AND f.state = 'open') AS offer,
  COALESCE((SELECT jsonb_agg(jsonb_build_object('day', f.slot->>'day', 'start', f.slot->>'start', 'state', f.state) ORDER BY f.offered_at) FROM slot_offer f WHERE f.entry_id = e.id AND f.state <> 'open'), '[]') AS earlier
FROM waiting_entry e JOIN orders o ON o.id = e.order_id JOIN dog d ON d.id = o.dog_id JOIN visit v ON v.id = e.visit_id JOIN person p ON p.id = e.person_id
WHERE e.practice_id = $1::uuid AND e.state = 'waiting' ORDER BY e.created_at, e.id`;

const ANSWERS: Record<string, string> = { declined: 'no', expired: 'no answer in time', taken: 'taken meanwhile', accepted: 'yes' };

export async function waitingRows(tx: Tx, practice: string): Promise<Row[]> {
  const rows = await tx.$queryRawUnsafe<Stored[]>(LIST, practice);
  return rows.map((row) => ({
    ...row,
    studies: row.studies.map((s) => findProtocol(s.protocol, s.version)?.deskName ?? s.protocol),
    earlier: row.earlier.map((e) => `${shortDay(e.day)}, ${e.start}: ${ANSWERS[e.state] ?? e.state}`),
  }));
}

export async function waitingList(deps: StepDeps, actor: Actor): Promise<WaitingList> {
  return deps.db.practice(actor.practice, async (tx) => {
    await audit(tx, { by: actor.id, role: actor.roles[0] ?? 'none', action: 'viewWaitingList', practice: actor.practice });
    return { rows: await waitingRows(tx, actor.practice) };
  });
}
