import type { Evaluation } from '#libs/pathway/evaluation';
import type { Tx } from '#libs/platform/database/db';
import { lockOrder } from '#libs/steps/record/order-record';
import { storeProjection } from '#libs/steps/record/projection';
import { workOn } from '#libs/steps/record/work';
import { noteStudies } from '#libs/steps/statistics/note-studies';
import type { Ground } from './ground.js';
import type { State } from './states.js';

export interface Standing { order: string; subject: string }

/** What is stored of each order beside its facts, rebuilt from those: to which step an action has led, and what differs. */
export async function rebuilt<T extends Standing>({ driver }: Ground, state: State, standings: T[]): Promise<(T & { to: string; differs?: string })[]> {
  return driver.db.system('a test rebuilds', async (tx) => {
    const found = [];
    for (const standing of standings) {
      const before = await stored(tx, standing.order);
      const record = (await lockOrder(tx, standing.order))!;
      const work = workOn(tx, new Date(record.facts.at(-1)!.rec), state.road.house.desk, record, driver.publicUrl);
      await storeProjection(work, work.evaluation);
      await noteStudies(work, work.evaluation);
      const after = await stored(tx, standing.order);
      found.push({ ...standing, to: stepOf(work.evaluation, standing.subject), ...(before === after ? {} : { differs: `${before}\n${after}` }) });
    }
    return found;
  });
}

const stepOf = ({ order, visits, studies }: Evaluation, id: string): string => (visits[id] ?? studies[id] ?? order).step;

async function stored(tx: Tx, order: string): Promise<string> {
  const rows = (table: string) => `(SELECT jsonb_agg(to_jsonb(t) ORDER BY t.id) FROM ${table} t WHERE t.order_id = $1::uuid)`;
  const counted = '(SELECT jsonb_agg(to_jsonb(t) ORDER BY t.study_id) FROM statistics_study t WHERE t.order_id = $1::uuid), (SELECT jsonb_agg(to_jsonb(c) ORDER BY c.protocol) FROM counting_row c WHERE c.dog_id = o.dog_id)';
  const [row] = await tx.$queryRawUnsafe<{ text: string }[]>(`SELECT jsonb_build_array(to_jsonb(o), ${rows('visit')}, ${rows('study')}, ${counted})::text AS text FROM orders o WHERE o.id = $1::uuid`, order);
  return row!.text;
}
