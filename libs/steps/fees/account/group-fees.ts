import type { GroupFees } from '#libs/contracts/fees';
import { audit } from '#libs/platform/audit/audit';
import type { Actor } from '../../record/actor.js';
import type { StepDeps } from '../../record/step-deps.js';
import { notFound } from '../../record/step-error.js';
import { ownMoney } from '../own-money.js';
import { feesOnly } from '../who-sees-fees.js';
import { SUMS } from './account-sql.js';

const GROUP = `SELECT d.call_name AS dog, o.id AS order, o.accession, a.accepted AS "acceptedMinor", m.charged AS "chargedMinor", m.paid AS "paidMinor", m.charged - m.paid AS "openMinor"
FROM group_booking_dog g JOIN orders o ON o.id = g.order_id JOIN dog d ON d.id = g.dog_id CROSS JOIN ${SUMS} WHERE g.group_id = $2::uuid AND g.practice_id = $1::uuid ORDER BY g.place`;

/** Dogs of one call have one payer: each of them, and their sum. */
export async function groupFees(deps: StepDeps, actor: Actor, group: string): Promise<GroupFees> {
  const role = feesOnly(actor);
  return deps.db.practice(actor.practice, async (tx) => {
    if (!(await tx.groupBooking.findUnique({ where: { id: group }, select: { id: true } }))) throw notFound();
    await audit(tx, { by: actor.id, role, action: 'viewFees', practice: actor.practice, subject: group });
    const { currency } = await ownMoney(tx, actor, deps.clock.now());
    const rows = await tx.$queryRawUnsafe<GroupFees['rows']>(GROUP, actor.practice, group);
    const sum = (field: keyof GroupFees['sum']) => rows.reduce((all, r) => all + r[field], 0);
    return { currency, rows, sum: { acceptedMinor: sum('acceptedMinor'), chargedMinor: sum('chargedMinor'), paidMinor: sum('paidMinor'), openMinor: sum('openMinor') } };
  });
}
