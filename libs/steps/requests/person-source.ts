import { localDay } from '#libs/pathway/zones';
import type { Tx } from '#libs/platform/database/db';
import { readOrder, type StoredFact } from '../record/order-record.js';

interface RoleRow { dog: string; role: string; from: string; until: string | null }
export interface PaperRow { id: string; kind: string; name: string; named: unknown; at: Date; pdfSha: string | null; snapshot: unknown }
export interface FilmRow { sha: string; kind: string; view: string; at: string }
export interface OrderSource { accession: string; dog: string; facts: StoredFact[]; papers: PaperRow[]; films: FilmRow[] }
export interface PersonSource {
  person: Record<string, unknown>;
  roles: RoleRow[];
  dogs: Record<string, unknown>[];
  orders: OrderSource[];
  mails: Record<string, unknown>[];
  seenBy: Record<string, unknown>[];
}

const OWNS = new Set(['owner', 'coOwner']);

/** All that the practice keeps about one person: of a dog, what belongs to the time in which it was theirs. */
export async function personSource(tx: Tx, person: string, zone: string): Promise<PersonSource> {
  const [row] = await tx.$queryRaw<{ person: Record<string, unknown> }[]>`SELECT to_jsonb(p) - 'practice_id' AS person FROM person p WHERE p.id = ${person}::uuid`;
  const roles = await tx.$queryRaw<RoleRow[]>`SELECT dog_id AS dog, role, to_char(valid_from, 'YYYY-MM-DD') AS from, to_char(valid_until, 'YYYY-MM-DD') AS until FROM dog_role WHERE person_id = ${person}::uuid ORDER BY valid_from`;
  const ids = [...new Set(roles.map((r) => r.dog))];
  const dogs = await tx.$queryRaw<{ dog: Record<string, unknown> }[]>`
    SELECT to_jsonb(d) - 'practice_id' || jsonb_build_object('names', (SELECT jsonb_agg(n.name ORDER BY n.valid_from) FROM dog_name n WHERE n.dog_id = d.id), 'numbers', (SELECT jsonb_agg(i.value) FROM dog_identifier i WHERE i.dog_id = d.id)) AS dog
    FROM dog d WHERE d.id = ANY(${ids}::uuid[])`;
  const orders = await tx.$queryRaw<{ id: string; dog: string }[]>`SELECT id, dog_id AS dog FROM orders WHERE dog_id = ANY(${ids}::uuid[]) ORDER BY accession`;
  const mails = await tx.$queryRaw<Record<string, unknown>[]>`SELECT kind, to_email AS "to", subject, state, created_at AS at FROM message WHERE person_id = ${person}::uuid ORDER BY created_at`;
  const seenBy = await tx.$queryRaw<Record<string, unknown>[]>`
    SELECT at, role, action FROM audit WHERE subject = ${person} OR order_id = ANY(${orders.map((o) => o.id)}::uuid[]) ORDER BY id`;
  const theirs = (dog: string) => (day: string) => roles.some((r) => r.dog === dog && OWNS.has(r.role) && r.from <= day && (r.until === null || day <= r.until));
  const sources: OrderSource[] = [];
  for (const { id, dog } of orders) sources.push(await orderSource(tx, id, person, zone, theirs(dog)));
  return { person: row!.person, roles, dogs: dogs.map((d) => d.dog), orders: sources.filter((o) => o.facts.length > 0), mails, seenBy };
}

async function orderSource(tx: Tx, id: string, person: string, zone: string, theirs: (day: string) => boolean): Promise<OrderSource> {
  const order = (await readOrder(tx, id))!;
  const dayOf = (at: string | Date) => localDay(new Date(at).toISOString(), zone);
  const facts = order.facts.filter((f) => theirs(dayOf(f.at)) || JSON.stringify(f).includes(person));
  const papers = await tx.document.findMany({ where: { orderId: id, forOwner: true }, select: { id: true, kind: true, name: true, named: true, at: true, pdfSha: true, snapshot: true }, orderBy: { at: 'asc' } });
  // A film that turned out to be another dog's is nothing of this person's.
  const disowned = new Set(order.facts.flatMap((f) => (f.type === 'exposureDisowned' ? [f.exposure] : [])));
  const taken = order.facts.flatMap((f) => (f.type === 'exposureTaken' && !disowned.has(f.exposure) && theirs(dayOf(f.at)) ? [f] : []));
  const kinds = new Map((await tx.image.findMany({ where: { orderId: id }, select: { sha256: true, kind: true } })).map((i) => [i.sha256, i.kind]));
  return {
    accession: order.accession, dog: order.dog, facts, papers: papers.filter((p) => theirs(dayOf(p.at))),
    films: taken.map((f) => ({ sha: f.image, kind: kinds.get(f.image) ?? '', view: f.view, at: f.at })),
  };
}
