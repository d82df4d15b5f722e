import type { StudyView } from '#libs/contracts/screens/order';
import { changesOf } from '#libs/science/protocols/change';
import { countingReading } from '#libs/science/protocols/counting-reading';
import type { JointReading } from '#libs/science/protocols/types';
import { t } from '#libs/words/spoken';
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
    joints: earlier.joints.map((j) => jointWords(earlier.protocol, j, t)).map(({ name, words }) => ({ name, words })), dog: dogWords(earlier.protocol, earlier.joints, t),
    changes: now ? changesOf(now.protocol, earlier.joints as JointReading[], now.joints as JointReading[]).map((c) => c.said.map((s) => t.said(s)).join(' ')) : [],
    counts: t('In statistics the reading of order {accession} counts. {words} Nobody chooses it.', { accession: counting?.accession ?? earlier.accession, words: t.known(earlier.protocol.statistics.words) }),
  };
}
