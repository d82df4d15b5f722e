import type { z } from 'zod';
import { csv, MOST_ROWS } from '#libs/contracts/csv';
import type { FeeList, FeeRow, feesAsked } from '#libs/contracts/fees';
import { audit } from '#libs/platform/audit/audit';
import type { Actor } from '../../record/actor.js';
import type { StepDeps } from '../../record/step-deps.js';
import { ownMoney } from '../own-money.js';
import { feesOnly } from '../who-sees-fees.js';
import { SUMS } from './account-sql.js';

const PAGE = 50;
type Asked = z.output<typeof feesAsked>;

const LIST = `SELECT o.id AS order, o.accession, d.call_name AS dog, a.accepted AS "acceptedMinor", m.charged AS "chargedMinor", m.paid AS "paidMinor", m.charged - m.paid AS "openMinor",
  (SELECT p.name FROM fact f JOIN person p ON p.id::text = f.body->>'payer' WHERE f.order_id = o.id AND f.type = 'payerNamed' ORDER BY f.seq DESC LIMIT 1) AS payer,
  (SELECT to_char(max(v.day), 'YYYY-MM-DD') FROM visit v WHERE v.order_id = o.id) AS "visitDay"
FROM orders o JOIN dog d ON d.id = o.dog_id CROSS JOIN ${SUMS}
WHERE (o.practice_id = $1::uuid OR m.has)
  AND ($2 <> 'open' OR m.charged <> m.paid)
  AND ($2 <> 'uncharged' OR EXISTS (SELECT 1 FROM visit v WHERE v.order_id = o.id AND v.practice_id = $1::uuid AND v.step = 'home' AND NOT EXISTS (
    SELECT 1 FROM fee_entry e WHERE e.order_id = o.id AND e.practice_id = $1::uuid AND e.visit_id = v.id AND e.kind = 'charge' AND NOT EXISTS (SELECT 1 FROM fee_entry r WHERE r.practice_id = e.practice_id AND r.reverses = e.id))))
  AND ($3 = '' OR o.accession ILIKE $4 OR d.call_name ILIKE $4)
ORDER BY o.created_at DESC, o.id LIMIT $5 OFFSET $6`;

/** What is open with whom; what went home and was not charged; or every order. */
export async function listFees(deps: StepDeps, actor: Actor, asked: Asked, perPage = PAGE): Promise<FeeList> {
  const role = feesOnly(actor);
  return deps.db.practice(actor.practice, async (tx) => {
    await audit(tx, { by: actor.id, role, action: 'listFees', practice: actor.practice });
    const { currency } = await ownMoney(tx, actor, deps.clock.now());
    const like = `%${asked.q.replace(/[\\%_]/g, '\\$&')}%`;
    const rows = await tx.$queryRawUnsafe<FeeRow[]>(LIST, actor.practice, asked.show, asked.q, like, perPage + 1, (asked.page - 1) * perPage);
    return { currency, rows: rows.slice(0, perPage), more: rows.length > perPage };
  });
}

/** Amounts in whole units, for a spreadsheet. */
export async function feesAsCsv(deps: StepDeps, actor: Actor, asked: Omit<Asked, 'page'>): Promise<string> {
  const { rows, currency, more } = await listFees(deps, actor, { ...asked, page: 1 }, MOST_ROWS);
  return csv(['Order', 'Dog', 'Payer', 'Visit', 'Currency', 'Accepted', 'Charged', 'Paid', 'Open'], rows.map((r) => [r.accession, r.dog, r.payer, r.visitDay, currency, ...[r.acceptedMinor, r.chargedMinor, r.paidMinor, r.openMinor].map((m) => (m / 100).toFixed(2))].map(unquoted)), more);
}

/** An amount below nothing is a number, and no formula. */
const unquoted = (cell: string | null): string | number | null => (cell !== null && /^-\d+\.\d\d$/.test(cell) ? Number(cell) : cell);
