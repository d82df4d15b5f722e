import { DAY_SHEET_STEPS, DAY_SHEET_TEMPLATE_VERSION, type DaySheetSnapshot } from '#libs/documents/snapshots';
import { renderDaySheet } from '#libs/documents/day-sheet';
import type { DayBoard } from '#libs/contracts/screens/board';
import type { Actor } from '../record/actor.js';
import { withOffset } from '../record/local-time.js';
import type { StepDeps } from '../record/step-deps.js';
import { lines } from '../report/on-paper.js';
import { dayBoard } from './day-board.js';

/** The day on paper, for when the network is down: what is known now, and open knots to fill with a pen. */
export async function daySheet(deps: StepDeps, actor: Actor, zone: string, day: string | undefined): Promise<Buffer> {
  const board = await dayBoard(deps, actor, zone, day);
  const practice = await deps.db.practice(actor.practice, (tx) => tx.practice.findUniqueOrThrow({ where: { id: actor.practice }, select: { name: true, address: true, phone: true } }));
  const snapshot: DaySheetSnapshot = {
    templateVersion: DAY_SHEET_TEMPLATE_VERSION, paper: 'A4', lang: 'en', issuedAt: withOffset(deps.clock.now(), zone),
    practice: { name: practice.name, addressLines: lines(practice.address), phone: practice.phone },
    date: board.day, printedBy: actor.name, visits: board.rows.filter((r) => !r.over || r.step === 'home').map(visitOnSheet),
  };
  return renderDaySheet(snapshot);
}

function visitOnSheet(row: DayBoard['rows'][number]): DaySheetSnapshot['visits'][number] {
  return {
    time: row.start, dog: { callName: row.dog, breed: row.breed, transponder: row.transponder }, owner: { name: row.owner, phone: row.phone }, studies: row.studies, room: row.room, staff: row.staff,
    steps: DAY_SHEET_STEPS.map((_, i) => { const state = row.road.knots[i]?.state; return state === 'done' ? 'done' : state === 'held' ? 'hold' : 'open'; }),
    waitsFor: row.road.hold ? { what: /[.?]$/.test(row.road.hold.title) ? row.road.hold.title : `${row.road.hold.title}.`, how: row.road.hold.rest } : null,
  };
}
