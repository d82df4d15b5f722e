import type { StudyView } from '#libs/contracts/screens/order';
import { changesOf } from '#libs/science/protocols/change';
import { countingReading } from '#libs/science/protocols/counting-reading';
import type { JointReading } from '#libs/science/protocols/types';
import type { Work } from '../record/work.js';
import { acceptedReadings, currentReadings, earlierReading, type OrderReadings } from '../result/accepted-readings.js';
import { dogWords, jointWords } from './reading-words.js';

/** The dog was examined before: both readings, the change held against the reading's error, and which of them counts. */
export function earlierOf({ evaluation, order }: Pick<Work, 'evaluation' | 'order'>, id: string, others: OrderReadings[]): StudyView['earlier'] {
  const standing = evaluation.studies[id]!;
  const own = acceptedReadings({ order: order.id, accession: order.accession, dog: '', studies: Object.values(evaluation.studies), facts: order.facts });
  const now = currentReadings(own).find((r) => r.study === id);
  const earlier = earlierReading(others, standing.protocol, now?.acceptedAt ?? '9999');
  if (!earlier) return null;
  const all = [...others.flatMap(acceptedReadings), ...own].filter((r) => r.protocol.code === standing.protocol);
  const counting = countingReading(earlier.protocol, all);
  return {
    order: earlier.order, accession: earlier.accession, readOn: earlier.readOn,
    joints: earlier.joints.map((j) => jointWords(earlier.protocol, j)).map(({ name, words }) => ({ name, words })), dog: dogWords(earlier.protocol, earlier.joints),
    changes: now ? changesOf(now.protocol, earlier.joints as JointReading[], now.joints as JointReading[]).map((c) => c.words) : [],
    counts: `In statistics the reading of order ${counting?.accession ?? earlier.accession} counts. ${earlier.protocol.statistics.words} Nobody chooses it.`,
  };
}
