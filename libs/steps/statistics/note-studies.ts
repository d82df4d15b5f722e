import type { Evaluation } from '#libs/pathway/evaluation';
import type { Work } from '../record/work.js';
import { studyRows } from './study-rows.js';

/**
 * Says in the transaction of the facts what the order counts for. The database then chooses the dog's one reading and
 * corrects the histograms before it commits; what has not changed costs nothing there.
 */
export async function noteStudies(work: Work, evaluation: Evaluation): Promise<void> {
  const rows = studyRows({ ...work, evaluation });
  if (rows.length > 0) await work.tx.$executeRaw`SELECT app.note_studies(${work.order.id}::uuid, ${JSON.stringify(rows)}::jsonb)`;
}
