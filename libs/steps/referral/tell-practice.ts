import { say, type Saying } from '../messages/say.js';
import type { Work } from '../record/work.js';

/** A line to another practice's own address; it names the order and nothing that was read. */
export async function tellPractice({ tx, order, actor }: Work, practice: string, s: Pick<Saying, 'once' | 'template' | 'data' | 'documents'>): Promise<void> {
  const rows = await tx.$queryRaw<{ id: string; name: string; email: string }[]>`SELECT id, name, email FROM app.practice_directory() WHERE id IN (${practice}::uuid, ${actor.practice}::uuid)`;
  const to = rows.find((r) => r.id === practice);
  if (!to) return;
  const from = rows.find((r) => r.id === actor.practice)?.name ?? order.practices[order.practice]?.name ?? '';
  await say(tx, { ...s, kind: 'referral', order: order.id, practice: order.practice, to: { name: to.name, email: to.email }, data: { accession: order.accession, from, ...s.data } });
}
