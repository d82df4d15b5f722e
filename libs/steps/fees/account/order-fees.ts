import type { OrderFees } from '#libs/contracts/fees';
import { audit } from '#libs/platform/audit/audit';
import type { Tx } from '#libs/platform/database/db';
import { readMatching } from '../bills/read-matching.js';
import { keyOf } from '../bills/match-lines.js';
import type { Actor } from '../../record/actor.js';
import type { StepDeps } from '../../record/step-deps.js';
import { feesOnly } from '../who-sees-fees.js';
import { openAccount } from './open-account.js';
import { openWords } from './open-words.js';
import { mailWords, silentWords } from './silent-words.js';
import { visitAccount } from './visit-account.js';

const STATEMENTS = `SELECT s.id, to_char(s.at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"') AS at, s.by_name AS by, COALESCE(p.name, 'Erased on request') AS to, (s.told->>'openMinor')::float8 AS "openMinor", m.state, m.detail
FROM fee_statement s LEFT JOIN person p ON p.id = s.person_id JOIN message m ON m.once_key = 'statement:' || s.practice_id || ':' || s.id WHERE s.order_id = $1::uuid AND s.practice_id = $2::uuid ORDER BY s.at DESC`;
type Statement = Omit<OrderFees['statements'][number], 'says'> & { state: string; detail: string | null };

/** All about the money of one order, as this practice has it. */
export async function orderFees(deps: StepDeps, actor: Actor, order: string): Promise<OrderFees> {
  const role = feesOnly(actor);
  return deps.db.practice(actor.practice, async (tx) => {
    const account = await openAccount(tx, deps, actor, order);
    const { work, entries, currency, zone, today } = account;
    await audit(tx, { by: actor.id, role, action: 'viewFees', practice: actor.practice, order });
    const visits = Object.keys(work.evaluation.visits).map((visit) => visitAccount(work, visit, entries, currency));
    const sum = (field: 'chargedMinor' | 'paidMinor' | 'openMinor') => visits.reduce((all, v) => all + v[field], 0);
    const [chargedMinor, paidMinor, openMinor] = [sum('chargedMinor'), sum('paidMinor'), sum('openMinor')];
    const silent = silentWords(work);
    const statements = await tx.$queryRawUnsafe<Statement[]>(STATEMENTS, order, actor.practice);
    const dog = await tx.dog.findUniqueOrThrow({ where: { id: work.order.dog }, select: { callName: true } });
    return {
      order, accession: work.order.accession, dog: dog.callName, zone, today, currency, silent, visits, chargedMinor, paidMinor, openMinor,
      says: openWords(chargedMinor, paidMinor, currency),
      ...(await peopleOf(tx, work.order.dog, work.facts('payerNamed').at(-1)?.payer)),
      statements: statements.map(({ state, detail, ...s }) => ({ ...s, says: mailWords({ state, detail }, silent) })),
      sent: await sentOf(tx, deps, actor, order),
      group: await groupOf(tx, actor, order),
    };
  });
}

async function peopleOf(tx: Tx, dog: string, payer: string | undefined): Promise<Pick<OrderFees, 'payer' | 'people'>> {
  const roles = await tx.dogRole.findMany({ where: { dogId: dog, until: null }, select: { personId: true } });
  const people = await tx.person.findMany({ where: { id: { in: [...roles.map((r) => r.personId), ...(payer ? [payer] : [])] } }, select: { id: true, name: true, email: true }, orderBy: { name: 'asc' } });
  const found = people.find((p) => p.id === payer);
  return { payer: found ? { id: found.id, name: found.name, mail: found.email !== null } : null, people: people.map(({ id, name }) => ({ id, name })) };
}

async function sentOf(tx: Tx, deps: StepDeps, actor: Actor, order: string): Promise<OrderFees['sent']> {
  const { studies, bills, matched } = await readMatching(tx, deps, actor);
  const lines = bills.flatMap((b) => b.lines.map((l) => ({ line: l.id, bill: { id: b.id, number: b.number } })));
  const billOf = new Map(lines.flatMap(({ line, bill }) => { const m = matched.get(line); return m?.state === 'matched' ? [[keyOf(m.of.centre, m.of.study), bill] as const] : []; }));
  return studies.flatMap((s) => (s.order === order && s.sentOn ? [{ study: s.study, name: s.name, centre: s.centreName, sentOn: s.sentOn, readOn: s.readOn, feeMinor: s.feeMinor, bill: billOf.get(keyOf(s.centre, s.study)) ?? null }] : []));
}

async function groupOf(tx: Tx, actor: Actor, order: string): Promise<OrderFees['group']> {
  const [row] = await tx.$queryRaw<{ id: string; dogs: number }[]>`
    SELECT g.group_id AS id, (SELECT count(*)::int FROM group_booking_dog d WHERE d.group_id = g.group_id AND d.order_id IS NOT NULL) AS dogs FROM group_booking_dog g WHERE g.order_id = ${order}::uuid AND g.practice_id = ${actor.practice}::uuid LIMIT 1`;
  return row ?? null;
}
