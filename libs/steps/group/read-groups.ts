import type { GroupBooking } from '#libs/contracts/group-booking';
import type { Tx } from '#libs/platform/database/db';
import { notFound } from '../record/step-error.js';
import type { Actor } from '../record/actor.js';
import type { StepDeps } from '../record/step-deps.js';

const GROUPS = `SELECT g.id, g.day, to_char(g.at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS"Z"') AS at, caller.name AS caller, payer.name AS payer, g.dam,
  CASE WHEN g.litter THEN jsonb_build_object('whole', g.whole, 'born', g.born, 'alive', g.alive, 'imaged', (SELECT count(*) FROM jsonb_array_elements(l.dogs) x WHERE (x->>'imaged')::boolean)) END AS litter, l.dogs
FROM group_booking g JOIN person caller ON caller.id = g.caller_id JOIN person payer ON payer.id = g.payer_id
CROSS JOIN LATERAL (SELECT jsonb_agg(jsonb_build_object('dog', d.id, 'name', d.call_name, 'order', o.id, 'accession', o.accession, 'day', v.day, 'start', v.start, 'step', v.step,
    'imaged', EXISTS (SELECT 1 FROM fact f WHERE f.order_id = o.id AND f.type = 'exposureTaken'), 'problem', m.problem) ORDER BY m.place) AS dogs
  FROM group_booking_dog m JOIN dog d ON d.id = m.dog_id LEFT JOIN orders o ON o.id = m.order_id
  LEFT JOIN LATERAL (SELECT day, start, step FROM visit WHERE order_id = o.id ORDER BY open DESC, day DESC NULLS LAST LIMIT 1) v ON true WHERE m.group_id = g.id) l`;

/** How many calls back the list goes. */
const MOST = 50;

export async function readGroup(tx: Tx, id: string): Promise<GroupBooking | undefined> {
  return (await tx.$queryRawUnsafe<GroupBooking[]>(`${GROUPS} WHERE g.id = $1::uuid`, id)).map(withDays)[0];
}

export async function oneGroup(deps: StepDeps, actor: Actor, id: string): Promise<GroupBooking> {
  const group = await deps.db.practice(actor.practice, (tx) => readGroup(tx, id));
  if (!group) throw notFound();
  return group;
}

/** The latest calls about several dogs. */
export async function listGroups(deps: StepDeps, actor: Actor): Promise<{ rows: GroupBooking[] }> {
  const rows = await deps.db.practice(actor.practice, (tx) => tx.$queryRawUnsafe<GroupBooking[]>(`${GROUPS} WHERE g.practice_id = $1::uuid ORDER BY g.at DESC LIMIT ${MOST}`, actor.practice));
  return { rows: rows.map(withDays) };
}

const withDays = (row: GroupBooking): GroupBooking => ({ ...row, day: new Date(row.day).toISOString().slice(0, 10) });
