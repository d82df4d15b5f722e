import { csv, MOST_ROWS } from '#libs/contracts/csv';
import type { WaitingList } from '#libs/contracts/waiting';
import { audit } from '#libs/platform/audit/audit';
import type { Tx } from '#libs/platform/database/db';
import { studyName } from '#libs/register/spoken-names';
import type { Actor } from '../record/actor.js';
import { shortDay } from '../record/day-words.js';
import type { StepDeps } from '../record/step-deps.js';

type Row = WaitingList['rows'][number];
interface Stored extends Omit<Row, 'studies' | 'earlier'> { studies: { protocol: string; version: string }[]; earlier: { day: string; start: string; state: string }[] }

const PAGE = 50;
const LIST = `SELECT e.id AS entry, o.id AS order, o.accession, d.call_name AS dog, p.name AS owner, COALESCE(p.phone, '') AS phone,
  to_char(v.day, 'YYYY-MM-DD') AS day, v.start, to_char(e.from_day, 'YYYY-MM-DD') AS "fromDay", to_char(e.created_at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS"Z"') AS since,
  COALESCE((SELECT jsonb_agg(jsonb_build_object('protocol', s.protocol, 'version', s.version)) FROM study s WHERE s.order_id = o.id AND s.open), '[]') AS studies,
  (SELECT jsonb_build_object('day', f.slot->>'day', 'start', f.slot->>'start', 'expiresAt', to_char(f.expires_at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS"Z"')) FROM slot_offer f WHERE f.entry_id = e.id AND f.state = 'open') AS offer,
  COALESCE((SELECT jsonb_agg(jsonb_build_object('day', f.slot->>'day', 'start', f.slot->>'start', 'state', f.state) ORDER BY f.offered_at) FROM slot_offer f WHERE f.entry_id = e.id AND f.state <> 'open'), '[]') AS earlier
FROM waiting_entry e JOIN orders o ON o.id = e.order_id JOIN dog d ON d.id = o.dog_id JOIN visit v ON v.id = e.visit_id JOIN person p ON p.id = e.person_id
WHERE e.practice_id = $1::uuid AND e.state = 'waiting' ORDER BY e.created_at, e.id LIMIT $2 OFFSET $3`;

const ANSWERS: Record<string, string> = { declined: 'no', expired: 'no answer in time', taken: 'taken meanwhile', accepted: 'yes' };

export async function waitingPage(tx: Tx, practice: string, page = 1, perPage = PAGE): Promise<WaitingList> {
  const rows = await tx.$queryRawUnsafe<Stored[]>(LIST, practice, perPage + 1, (page - 1) * perPage);
  return {
    more: rows.length > perPage,
    rows: rows.slice(0, perPage).map((row) => ({
      ...row,
      studies: row.studies.map(studyName),
      earlier: row.earlier.map((e) => `${shortDay(e.day)}, ${e.start}: ${ANSWERS[e.state] ?? e.state}`),
    })),
  };
}

export async function waitingList(deps: StepDeps, actor: Actor, page = 1, perPage = PAGE): Promise<WaitingList> {
  return deps.db.practice(actor.practice, async (tx) => {
    await audit(tx, { by: actor.id, role: actor.roles[0] ?? 'none', action: 'viewWaitingList', practice: actor.practice });
    return waitingPage(tx, actor.practice, page, perPage);
  });
}

/** The same list as a file for a spreadsheet. */
export async function waitingAsCsv(deps: StepDeps, actor: Actor): Promise<string> {
  const { rows, more } = await waitingList(deps, actor, 1, MOST_ROWS);
  return csv(['Order', 'Dog', 'Owner', 'Phone', 'Studies', 'Booked', 'At', 'Not before', 'Since', 'Offered', 'At', 'Earlier offers'], rows.map((r) => [r.accession, r.dog, r.owner, r.phone, r.studies.join('; '), r.day, r.start, r.fromDay, r.since, r.offer?.day ?? null, r.offer?.start ?? null, r.earlier.join('; ')]), more);
}
