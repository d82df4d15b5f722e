import { createHash, randomUUID } from 'node:crypto';
import { readingKey } from '#libs/science/protocols/same-reading';
import { normaliseScan } from '#libs/science/identifiers/normalise-scan';
import type { RoomAnswer } from '#libs/science/protocols/compare-with-room';
import { t } from '#libs/words/spoken';
import { readRoomMarks, roomAnswer } from '../quality/room-marks.js';
import { badInput } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';
import type { Stated, Work } from '../record/work.js';
import { checkJoints, protocolOf } from './check-joints.js';

export const valuesHash = (key: string): string => createHash('sha256').update(key).digest('hex');

/**
 * A reading as it came: values or coded reasons per joint. Equal values are one result, the same number with
 * other values amends, another number with other values is a conflict; the pathway tells them apart by hash and number.
 */
export const enterResult = useCase('enterResult', async (work, on, input) => {
  const protocol = protocolOf(work, on);
  const { joints, ask } = checkJoints(protocol, input.joints);
  if (input.channel === 'post' && !input.scan) throw badInput('scan', t('A result by post is scanned first; then two people key it.'));
  const result = randomUUID();
  const reading = work.evaluation.studies[on]!.step === 'appealed' ? 'second' : 'first';
  const reader = readerOf(work, input.readBy);
  if (reading === 'second') anotherReader(work, on, reader);
  const room = roomAnswer(work, on, protocol, joints, await readRoomMarks(work));
  const asked = [...ask.map((p) => p.told), ...doubts(room)];
  const problems = [...(asked.length > 0 ? ['RANGE' as const] : []), ...identityProblem(work, input.dogNumber), ...dateProblem(work, on, input.readOn)];
  const stated: Stated[] = [
    {
      type: 'resultArrived', study: on, result, ref: input.ref, channel: input.channel, reading, valuesHash: valuesHash(readingKey(protocol, joints)), joints,
      ...(input.scan ? { scan: input.scan } : {}),
      detail: { comment: input.comment ?? null, readOn: input.readOn ?? null, dogNumber: input.dogNumber ?? null, reader, ask: asked },
    },
  ];
  // Whoever types a sheet in has keyed it; another person keys it without seeing that.
  if (input.channel === 'post') stated.push({ type: 'resultKeyed', study: on, result, valuesHash: valuesHash(readingKey(protocol, joints)), detail: { joints } });
  if (problems.length > 0) stated.push({ type: 'resultChecked', study: on, result, problems });
  return stated;
});

/** Only what a person has to look at; that the sides agree or cannot be told apart is shown beside the reading. */
export const doubts = (room: RoomAnswer | undefined): string[] => (room && room.verdict !== 'looksStraight' && room.verdict !== 'cannotTell' ? [room.words] : []);

/** Whoever the sheet, the file or the message names; on the reader's page, whoever signs it. */
const readerOf = ({ actor }: Work, named: string | undefined): string | null => named ?? (actor.roles.includes('reader') ? actor.name : null);

function anotherReader({ facts }: Work, study: string, reader: string | null): void {
  const first = facts('resultArrived').filter((f) => f.study === study).map((f) => f.detail?.reader);
  if (reader && first.includes(reader)) throw badInput('signedBy', t('A second reading is made by another reader than the first.'));
}

function identityProblem(work: Work, number: string | undefined): 'IDENTITY'[] {
  if (!number) return [];
  const numbers = [...work.facts('orderOpened'), ...work.facts('dogRestated')].at(-1)?.numbers ?? [];
  return numbers.includes(normaliseScan(number)) ? [] : ['IDENTITY'];
}

/** Read before it was imaged: one of the two days is wrong. */
function dateProblem(work: Work, study: string, readOn: string | undefined): 'DATE'[] {
  const imaged = work.facts('exposureTaken').filter((f) => f.serves.includes(study)).map((f) => f.imageDay).sort().at(-1);
  return readOn && imaged && readOn < imaged ? ['DATE'] : [];
}
