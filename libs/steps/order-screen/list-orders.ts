import { csv, MOST_ROWS } from '#libs/contracts/csv';
import type { OrderRow } from '#libs/contracts/screens/order';
import { audit } from '#libs/platform/audit/audit';
import { holdPhrases } from '#libs/pathway/hold-words-table';
import type { HoldCode } from '#libs/pathway/hold-codes';
import { stepName, studyName } from '#libs/register/spoken-names';
import type { Actor } from '../record/actor.js';
import type { StepDeps } from '../record/step-deps.js';

const PAGE = 50;
interface Row { id: string; accession: string; dog: string; breed: string; owner: string | null; step: string; hold: string | null; protocols: { protocol: string; version: string }[] | null; day: string | null; overdue: boolean }

export interface ListAsked { show: 'open' | 'waiting' | 'all'; q: string; page: number }

/** The same list as a file for a spreadsheet. */
export async function ordersAsCsv(deps: StepDeps, actor: Actor, asked: Omit<ListAsked, 'page'>): Promise<string> {
  const { rows, more } = await listOrders(deps, actor, { ...asked, page: 1 }, MOST_ROWS);
  return csv(['Order', 'Dog', 'Breed', 'Owner', 'Studies', 'Day', 'Step', 'Waits for', 'Overdue'], rows.map((r) => [r.accession, r.dog, r.breed, r.owner, r.studies.join('; '), r.day, r.stepLabel, r.hold, r.overdue ? 'yes' : 'no']), more);
}

export async function listOrders(deps: StepDeps, actor: Actor, asked: ListAsked, perPage = PAGE): Promise<{ rows: OrderRow[]; more: boolean }> {
  const rows = await deps.db.practice(actor.practice, async (tx) => {
    await audit(tx, { by: actor.id, role: actor.roles[0] ?? 'none', action: 'listOrders', practice: actor.practice });
    return tx.$queryRaw<Row[]>`
      SELECT o.id, o.accession, d.call_name AS dog, d.breed, o.step, o.first_hold AS hold,
        (SELECT p.name FROM dog_role r JOIN person p ON p.id = r.person_id WHERE r.dog_id = d.id AND r.role = 'owner' AND r.valid_until IS NULL LIMIT 1) AS owner,
        (SELECT jsonb_agg(jsonb_build_object('protocol', s.protocol, 'version', s.version) ORDER BY s.protocol) FROM study s WHERE s.order_id = o.id) AS protocols,
        (SELECT to_char(max(v.day), 'YYYY-MM-DD') FROM visit v WHERE v.order_id = o.id) AS day,
        EXISTS (SELECT 1 FROM study s WHERE s.order_id = o.id AND s.clock IS NOT NULL AND s.due_day < ${deps.clock.now()}::date) AS overdue
      FROM orders o JOIN dog d ON d.id = o.dog_id
      WHERE (${asked.show} = 'all' OR NOT o.closed) AND (${asked.show} <> 'waiting' OR o.first_hold IS NOT NULL)
        AND (${asked.q} = '' OR o.accession ILIKE ${`%${asked.q}%`} OR d.call_name ILIKE ${`%${asked.q}%`}
          OR EXISTS (SELECT 1 FROM dog_role r JOIN person p ON p.id = r.person_id WHERE r.dog_id = d.id AND r.role = 'owner' AND p.name ILIKE ${`%${asked.q}%`}))
      ORDER BY o.created_at DESC, o.id LIMIT ${perPage + 1} OFFSET ${(asked.page - 1) * perPage}`;
  });
  return {
    more: rows.length > perPage,
    rows: rows.slice(0, perPage).map((r) => ({
      id: r.id, accession: r.accession, dog: r.dog, breed: r.breed, owner: r.owner ?? '', step: r.step, stepLabel: stepName(r.step),
      hold: r.hold ? holdPhrases[r.hold as HoldCode].title : null,
      studies: (r.protocols ?? []).map(studyName),
      day: r.day, overdue: r.overdue,
    })),
  };
}
