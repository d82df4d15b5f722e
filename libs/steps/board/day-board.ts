import type { BoardRow, DayBoard } from '#libs/contracts/screens/board';
import { audit } from '#libs/platform/audit/audit';
import { evaluate } from '#libs/pathway/evaluate';
import { isRoutine } from '#libs/pathway/routine';
import { isOpenVisit } from '#libs/pathway/steps';
import { localDay } from '#libs/pathway/zones';
import { DOG } from '#libs/register/dog-sql';
import type { DogRow } from '#libs/register/dog-of-row';
import { studyName } from '#libs/register/spoken-names';
import { countUnmatched } from '../gateway/unmatched.js';
import { countLeft } from '../results-in/left-readings.js';
import { mayDo } from '../order-screen/holds-and-next.js';
import { namesOf } from '../order-screen/names.js';
import { threadScreen, titleAndRest } from '../order-screen/thread-screen.js';
import type { Actor } from '../record/actor.js';
import { withRules, type OrderRow } from '../record/order-record.js';
import { RECORD } from '../record/order-sql.js';
import type { StepDeps } from '../record/step-deps.js';
import type { Work } from '../record/work.js';

interface Row { record: OrderRow; dog: DogRow; staff: { id: string; name: string; roles: string[] }[]; directory: { id: string; name: string; place: string }[]; today: boolean }

/** Orders of that day's visits, and those that wait for somebody without a visit on that day. */
const BOARD = `SELECT ${RECORD} AS record, ${DOG} AS dog,
  COALESCE((SELECT jsonb_agg(jsonb_build_object('id', s.id, 'name', s.name, 'roles', s.roles)) FROM staff s WHERE s.practice_id = $2::uuid), '[]') AS staff,
  COALESCE((SELECT jsonb_agg(jsonb_build_object('id', q.id, 'name', q.name, 'place', q.place)) FROM app.practice_directory() q), '[]') AS directory,
  EXISTS (SELECT 1 FROM visit v WHERE v.order_id = o.id AND v.day = $1::date AND v.practice_id = $2::uuid) AS today
FROM orders o JOIN dog d ON d.id = o.dog_id
WHERE EXISTS (SELECT 1 FROM visit v WHERE v.order_id = o.id AND v.day = $1::date AND v.practice_id = $2::uuid)
   OR o.id IN (SELECT w.id FROM orders w WHERE NOT w.closed AND w.first_hold IS NOT NULL ORDER BY w.created_at DESC LIMIT 60)`;

export async function dayBoard(deps: StepDeps, actor: Actor, zone: string, asked: string | undefined): Promise<DayBoard> {
  const now = deps.clock.now();
  const today = localDay(now.toISOString(), zone);
  const day = asked ?? today;
  const { rows, unmatched, readingsLeft } = await deps.db.practice(actor.practice, async (tx) => {
    await audit(tx, { by: actor.id, role: actor.roles[0] ?? 'none', action: 'viewDayBoard', practice: actor.practice, subject: day });
    return { rows: await tx.$queryRawUnsafe<Row[]>(BOARD, day, actor.practice), unmatched: await countUnmatched(tx, actor.practice), readingsLeft: await countLeft(tx) };
  });
  const board: BoardRow[] = [];
  const tasks: DayBoard['tasks'] = [];
  for (const row of rows) {
    const drawn = draw(row, actor, now);
    board.push(...drawn.visits.filter((v) => v.day === day));
    if (!drawn.visits.some((v) => v.day === day)) tasks.push(...drawn.tasks);
  }
  board.sort((a, b) => a.start.localeCompare(b.start) || a.dog.localeCompare(b.dog));
  const count = (test: (r: BoardRow) => boolean) => board.filter(test).length;
  return {
    day, today, now: now.toISOString(), zone, unmatched, readingsLeft, rows: board, tasks,
    counts: {
      visits: board.length, home: count((r) => r.step === 'home'), here: count((r) => ['admitted', 'sedated', 'imaged', 'recovered'].includes(r.step)),
      toCome: count((r) => r.step === 'booked'), ended: count((r) => ['cancelled', 'missed', 'turnedAway', 'died'].includes(r.step)),
      waiting: count((r) => r.road.hold !== null), forMe: count((r) => r.waitsForMe),
    },
  };
}

function draw(row: Row, actor: Actor, now: Date): { visits: (BoardRow & { day: string })[]; tasks: DayBoard['tasks'] } {
  const order = withRules(row.record);
  const evaluation = evaluate(order.facts, now.toISOString(), order.rules);
  const facts: Work['facts'] = (type) => order.facts.filter((f): f is never => f.type === type);
  const work = { order, evaluation, facts };
  const naming = { names: namesOf(row, work), zone: order.practices[order.practice]!.zone };
  const roads = threadScreen(work, naming);
  const owner = row.dog.people.find((p) => p.role === 'owner' && !p.until)?.person;
  const visits = Object.values(evaluation.visits).filter((v) => v.day !== undefined).map((v) => {
    const booked = facts('visitBooked').filter((f) => f.visit === v.id).at(-1);
    const road = roads.visits.find((r) => r.id === v.id)!;
    const first = v.holds.find((h) => h.who.length > 0 && titleAndRest(h, naming).title === road.hold?.title) ?? v.holds[0];
    return {
      day: v.day!, order: order.id, visit: v.id, accession: order.accession, start: v.start ?? '', room: String(booked?.detail?.roomName ?? ''),
      dog: row.dog.callName, breed: row.dog.breed, transponder: row.dog.identifiers.find((i) => !i.until && i.kind === 'transponder')?.value ?? null,
      staff: ['operatorName', 'vetName', 'nurseName'].map((who) => booked?.detail?.[who]).filter((name) => typeof name === 'string'), owner: owner?.name ?? '', phone: owner?.phone ?? '',
      studies: v.studies.map((s) => studyName(evaluation.studies[s]!)), step: v.step, road,
      waitsForMe: road.hold !== null && first !== undefined && first.ways.some((w) => mayDo(w, actor)) && first.who.some((w) => actor.roles.includes(w)),
      over: !isOpenVisit(v.step),
    };
  });
  const holds = [...Object.values(evaluation.visits), ...Object.values(evaluation.studies), evaluation.order].flatMap((s) => s.holds.filter((h) => !isRoutine(h, s.holds) && h.who.length > 0));
  const first = holds.find((h) => h.who.some((w) => actor.roles.includes(w))) ?? holds[0];
  const tasks = first ? [{ order: order.id, accession: order.accession, dog: row.dog.callName, ...titleAndRest(first, naming), forMe: first.who.some((w) => actor.roles.includes(w)) }] : [];
  return { visits, tasks };
}
