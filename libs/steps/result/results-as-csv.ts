import { csv } from '#libs/contracts/csv';
import { audit } from '#libs/platform/audit/audit';
import { t } from '#libs/words/spoken';
import { dogWords, jointWords } from '../order-screen/reading-words.js';
import { standingCells } from '../standing/standing-view.js';
import type { Actor } from '../record/actor.js';
import type { StepDeps } from '../record/step-deps.js';
import { acceptedReadings, currentReadings, readingsOf, type OrderReadings } from './accepted-readings.js';

/** One line a joint, in the words of the pages and papers: a value, or the reason why there is none. */
export async function resultsAsCsv(deps: StepDeps, actor: Actor): Promise<string> {
  const orders = await deps.db.practice(actor.practice, async (tx) => {
    await audit(tx, { by: actor.id, role: actor.roles[0] ?? 'none', action: 'listResults', practice: actor.practice });
    return tx.$queryRawUnsafe<{ readings: OrderReadings }[]>(`SELECT ${readingsOf('o')} AS readings FROM orders o WHERE EXISTS (SELECT 1 FROM fact f WHERE f.order_id = o.id AND f.type = 'resultAccepted') ORDER BY o.created_at, o.id`);
  });
  const rows = orders.flatMap(({ readings }) => currentReadings(acceptedReadings(readings)).flatMap((r) => {
    const among = standingCells(readings.facts, r.study, r.dog);
    return r.joints.map((j) => jointWords(r.protocol, j, t)).map((j) => [r.accession, r.dog, t.known(r.protocol.deskName), r.protocol.version, j.name, j.words, j.flags.join('; '), dogWords(r.protocol, r.joints, t), r.reader, r.readOn, ...among]);
  }));
  return csv(['Order', 'Dog', 'Study', 'Version', 'Joint', 'Reading', 'Found beside', 'Dog', 'Read by', 'Read on', 'Place among the breed', 'The row'], rows);
}
