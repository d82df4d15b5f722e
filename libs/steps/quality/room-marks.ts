import type { Mark } from '#libs/science/measurement/check-marks';
import { evaluateMarks } from '#libs/science/measurement/evaluate-marks';
import type { Picture } from '#libs/science/measurement/picture-scale';
import { compareWithRoom, type RoomAnswer } from '#libs/science/protocols/compare-with-room';
import type { RoomEstimate } from '#libs/science/protocols/sides-swapped';
import type { JointReading, Protocol } from '#libs/science/protocols/types';
import { filmsOf } from '../dispatch/films-of.js';
import { servedBy } from '../imaging/film-of.js';
import type { Work } from '../record/work.js';

/** One row of room_mark. */
export interface RoomMarks {
  exposure: string;
  picture: Picture;
  marks: Mark[];
  at: string;
}

type Seen = Pick<Work, 'facts'>;

/** The index is measured on this view alone. */
const INDEX_VIEW = 'vdDistraction';
const measuresIndex = ({ value, views }: Protocol) => value.kind === 'number' && value.name === 'distraction index' && views.some(({ code }) => code === INDEX_VIEW);

/** Before every study that a film serves is sealed, what was measured on it in the room stays there. */
function isSealed(work: Seen, exposure: string): boolean {
  const serves = servedBy(work, exposure);
  return serves.length > 0 && serves.every((study) => work.facts('packageSealed').some((p) => p.study === study && p.exposures.includes(exposure)));
}

/** What was measured in the room on a study's newest accepted film, once it may be looked at; undefined when nothing was or it may not. */
export function roomEstimate(work: Seen, study: string, protocol: Protocol, rows: readonly RoomMarks[]): RoomEstimate | undefined {
  if (!measuresIndex(protocol)) return undefined;
  const film = filmsOf(work as Work, study).findLast((f) => f.view === INDEX_VIEW && f.accepted && rows.some((row) => row.exposure === f.exposure));
  if (!film || !isSealed(work, film.exposure)) return undefined;
  const row = rows.findLast(({ exposure }) => exposure === film.exposure)!;
  const { left, right } = evaluateMarks({ view: film.view, picture: row.picture, marks: row.marks }).index;
  return left && right && { left: left.value, right: right.value, standardError: Math.max(left.standardError, right.standardError) };
}

export function roomAnswer(work: Seen, study: string, protocol: Protocol, joints: JointReading[], rows: readonly RoomMarks[]): RoomAnswer | undefined {
  const estimate = roomEstimate(work, study, protocol, rows);
  return estimate && compareWithRoom(protocol, joints, estimate);
}

export const readRoomMarks = async ({ tx, order }: Pick<Work, 'tx' | 'order'>): Promise<RoomMarks[]> =>
  (await tx.roomMark.findMany({ where: { orderId: order.id }, orderBy: [{ at: 'asc' }] })) as unknown as RoomMarks[];
