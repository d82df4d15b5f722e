import type { Words } from '#libs/words/words';
import type { StudyOnPaper } from '#libs/documents/snapshots';
import { changesOf } from '#libs/science/protocols/change';
import type { JointReading } from '#libs/science/protocols/types';
import type { Work } from '../record/work.js';
import { acceptedReadings, currentReadings, earlierReading, readingsOf, type OrderReadings } from '../result/accepted-readings.js';

/** For a dog that was examined before, told to those who had that letter too: a change that two looks at the same joint would give anyway is said to be none. */
export async function earlierOnPaper({ tx, order, evaluation }: Work, study: string, to: string[], t: Words): Promise<Pick<StudyOnPaper, 'earlier'>> {
  const now = currentReadings(acceptedReadings({ order: order.id, accession: order.accession, dog: '', studies: Object.values(evaluation.studies), facts: order.facts })).find((r) => r.study === study);
  const others = await tx.$queryRawUnsafe<{ readings: OrderReadings }[]>(`SELECT ${readingsOf('o')} AS readings FROM orders o WHERE o.dog_id = $1::uuid AND o.id <> $2::uuid`, order.dog, order.id);
  const earlier = now && earlierReading(others.map((o) => o.readings).filter((o) => toldTo(o, to)), now.protocol.code, now.acceptedAt);
  if (!earlier) return {};
  return { earlier: { readOn: earlier.readOn, changes: changesOf(now.protocol, earlier.joints as JointReading[], now.joints as JointReading[]).map((c) => c.said.map((s) => t.said(s)).join(' ')) } };
}

const toldTo = ({ facts }: OrderReadings, to: string[]): boolean => to.every((person) => facts.some((f) => f.type === 'letterReleased' && f.kind === 'result' && f.to.includes(person)));
