import { randomUUID } from 'node:crypto';
import { actionNames, type ActionName } from '#libs/contracts/actions/all';
import { actions, type Action } from '#libs/pathway/actions';
import { factKinds } from '#libs/pathway/fact-kinds';
import { studyMoves, visitMoves, type Move } from '#libs/pathway/roads';
import { orderEnds, studyEnds, studySteps, visitEnds, visitSteps } from '#libs/pathway/steps';
import { complaintOf } from './access-support/complaint.js';
import type { Answer } from './access-support/visitor.js';
import { bodies } from './matrix-support/bodies.js';
import { cellsOf, nameForOthers, nameOf, outsidersCells, staff, type Cell, type OutsidersCell, type Staff } from './matrix-support/cells.js';
import type { Copy } from './matrix-support/copies.js';
import { openGround, type Ground } from './matrix-support/ground.js';
import { People } from './matrix-support/people.js';
import { rebuilt } from './matrix-support/rebuilt.js';
import { first, reachStates, ways, type State } from './matrix-support/states.js';

// Every action, wherever an order can stand, by everybody: refused with the reasons, or done once and whole.

let ground: Ground;
let people: People;
let states: State[];
const asked = new Set<string>();
/** Who did what, from which step, and to which. */
const done: { action: ActionName; by: string; from: string; to: string }[] = [];
/** What was not as the pathway says. */
const wrong: string[] = [];

beforeAll(async () => {
  ground = await openGround();
  people = new People(ground);
  states = await reachStates(ground);
}, 240_000);
afterAll(() => ground.close());

const kindOf = (action: ActionName) => factKinds[actions[action as Action].writes].kind;

/** True once for each name. */
function isNew(name: string): boolean {
  const known = asked.has(name);
  asked.add(name);
  return !known;
}

interface OneRoad { action: ActionName; from: readonly string[]; to: string }
const allRoads = [...visitMoves, ...studyMoves].flatMap(({ from, by, to }: Move<string>) => by.map((action): OneRoad => ({ action: action as ActionName, from, to })));
const isGone = ({ action, from, to }: OneRoad) => done.some((d) => d.action === action && d.to === to && from.includes(d.from));
/** A road that begins here and was not gone from anywhere. */
const notGone = ({ action, step }: Cell) => allRoads.some((road) => road.action === action && road.from.includes(step) && !isGone(road));

/** So many at once. */
async function together(work: (() => Promise<void>)[]): Promise<void> {
  const queue = [...work];
  await Promise.all(Array.from({ length: 6 }, async () => { for (let next = queue.shift(); next; next = queue.shift()) await next(); }));
}

async function ask(state: State, roles: readonly Staff[], copy: Copy, { action, on }: Cell, more: { version?: number; key?: string }): Promise<Answer> {
  const visitor = await people.with(roles, state.practice);
  const input = bodies[action](state.road, state.practice);
  return visitor.post(`/api/orders/${copy.order}/actions/${action}`, { key: randomUUID(), on: copy.of(on), input: copy.of(input), ...more });
}

/** All rows of an order, and where the outbox ends. */
const everything = async (copy: Copy): Promise<string> => {
  const { rows } = await ground.owner.query<{ n: string }>('SELECT COALESCE(max(id), 0)::text AS n FROM outbox');
  return `${rows[0]!.n} ${await ground.copies.rowsOf(copy.order)}`;
};

/** Sends what is to be refused; afterwards everything is as it was. */
async function refused(state: State, copy: Copy, requests: { said: string; code: string; send: () => Promise<Answer> }[]): Promise<void> {
  const before = await everything(copy);
  await together(requests.map(({ said, code, send }) => async () => {
    const complaint = complaintOf(await send(), said);
    if (complaint.code !== code) wrong.push(`${said}: ${code} was expected, and came ${complaint.code}, ${complaint.message}`);
    if (/\b[A-Z]+_[A-Z_]+\b/.test(complaint.message)) wrong.push(`${said}: no words for a person in ${complaint.message}`);
  }));
  if ((await everything(copy)) !== before) wrong.push(`${state.name}: something was changed by what was refused`);
}

const codeFor = ({ because }: { because: string[] }) => ['NOT_YOUR_ROLE', 'NOT_AT_THIS_STEP'].find((code) => because.includes(code)) ?? 'HELD';

describe.each(['booked', ...Object.keys(ways)])('an order that is %s', (name) => {
  let state: State;
  let cells: Cell[];
  let others: Cell[];

  beforeAll(() => {
    state = states.find((s) => s.name === name)!;
    ground.clock.set(state.at);
    const all = cellsOf(state);
    cells = all.filter((cell) => isNew(nameOf(state, cell)) || (cell.because.length === 0 && notGone(cell)));
    others = all.filter((cell) => cell.because.length === 0 && cell.wrong.length > 0 && isNew(nameForOthers(state, cell)));
  });
  afterEach(() => {
    expect(wrong.splice(0)).toEqual([]);
    expect(ground.broken.splice(0)).toEqual([]);
  });

  it('refuses who has not the role, what stands against it, and what is decided on an older picture', async () => {
    const { version } = state.road;
    const [copy] = await ground.copies.make(state.original, 1);
    const request = (cell: Cell, roles: Staff[], code: string, more: object) => ({ said: `${name}: ${roles.join(' and ')} asks ${cell.action} ${JSON.stringify(more)}`, code, send: () => ask(state, roles, copy!, cell, more) });
    // Who has every role at once is refused only where each of them is.
    const held = cells.filter((c) => c.because.length > 0);
    const decided = cells.filter((c) => c.because.length === 0 && c.right.length > 0 && kindOf(c.action) === 'decided');
    await refused(state, copy!, [
      ...others.map((cell) => request(cell, cell.wrong, 'NOT_YOUR_ROLE', { version })),
      ...held.map((cell) => request(cell, [...staff], cell.right.length > 0 ? codeFor(cell) : 'NOT_YOUR_ROLE', { version })),
      ...decided.map((cell) => request(cell, cell.right, 'CHANGED_MEANWHILE', { version: 0 })),
      ...decided.filter(({ action }) => isNew(`no version ${action}`)).map((cell) => request(cell, cell.right, 'CHANGED_MEANWHILE', {})),
    ]);
  }, 120_000);

  it('does the rest once, also when it is asked twice at the same time, and stores what a rebuild finds', async () => {
    const { version } = state.road;
    const tries = cells.filter((c) => c.because.length === 0).flatMap((cell) => cell.right.filter((role, n) => n === 0 || isNew(`${role} ${cell.action}`)).map((by, n) => ({ cell, by, twice: n === 0 })));
    const copies = await ground.copies.make(state.original, tries.length);
    await together(tries.map(({ cell, by, twice }, n) => async () => {
      const said = `${name}: ${by} does ${cell.action}`;
      const [same, another] = [randomUUID(), randomUUID()];
      const keys = [same, ...(twice ? [another] : []), ...(isNew(`the same key ${cell.action}`) ? [same] : [])];
      const answers = await Promise.all(keys.map(async (key) => ({ key, answer: await ask(state, [by], copies[n]!, cell, { version, key }) })));
      const codes = answers.map(({ key, answer }) => ({ key, code: answer.status === 200 ? 'done' : complaintOf(answer, said).code }));
      const doneBy = new Set(codes.filter((c) => c.code === 'done').map((c) => c.key));
      if (doneBy.size === 0) wrong.push(`${said}: ${JSON.stringify(answers[0]!.answer.body)}`);
      if (kindOf(cell.action) === 'decided' && doneBy.size > 1) wrong.push(`${said}: decided twice on one picture`);
      if (new Set(codes.filter((c) => c.key === same).map((c) => c.code)).size > 1) wrong.push(`${said}: the same request twice was answered in two ways`);
    }));
    for (const { cell, by, to, differs } of await rebuilt(ground, state, tries.map((t, n) => ({ ...t, order: copies[n]!.order, subject: copies[n]!.of(t.cell.on) })))) {
      done.push({ action: cell.action, by, from: cell.step, to });
      if (differs) wrong.push(`${name}: after ${cell.action} ${differs}`);
    }
  }, 120_000);

  it('lets owner and reader do what the pathway lets them, and nothing else', async () => {
    const fresh = outsidersCells(state).filter((cell) => isNew(cell.name));
    const copies = await ground.copies.make(state.original, fresh.length);
    const before = await Promise.all(copies.map((c) => ground.copies.rowsOf(c.order)));
    const send = async ({ by, door, sealed }: OutsidersCell, copy: Copy): Promise<Answer> => {
      const visitor = by === 'owner' ? await people.owner(copy, state) : await people.reader(copy, state, sealed!);
      return visitor.post(`/api/${by === 'owner' ? 'owner' : 'reader/packages'}/${copy.of(door.path)}`, copy.of(door.body));
    };
    const saying = (cell: OutsidersCell) => `${name}: the ${cell.by} asks ${cell.door.action}`;
    await together(fresh.map((cell, n) => async () => {
      const answer = await send(cell, copies[n]!);
      const code = answer.status === 200 ? 'done' : complaintOf(answer, saying(cell)).code;
      // Who says a second time that the films came is thanked, and nothing is written.
      const expected = cell.because.length === 0 ? ['done'] : cell.door.action === 'acknowledge' ? [codeFor(cell), 'done'] : [codeFor(cell)];
      if (!expected.includes(code)) wrong.push(`${saying(cell)}: ${expected.join()} was expected, and came ${JSON.stringify(answer.body)}`);
      if (cell.because.length > 0 && (await ground.copies.rowsOf(copies[n]!.order)) !== before[n]) wrong.push(`${saying(cell)}: refused, and something was changed`);
    }));
    const allowed = fresh.map((cell, n) => ({ cell, order: copies[n]!.order, subject: copies[n]!.of(cell.on) })).filter(({ cell }) => cell.because.length === 0);
    for (const { cell, to, differs } of await rebuilt(ground, state, allowed)) {
      done.push({ action: cell.door.action, by: cell.by, from: cell.step, to });
      if (differs) wrong.push(`${name}: after ${cell.door.action} of the ${cell.by} ${differs}`);
    }
  }, 120_000);
});

describe('nothing was left out', () => {
  const stepsOf = (pick: (state: State) => string) => [...new Set(states.map(pick))].sort();

  it('an order, a visit and a study stood at every step', () => {
    expect(stepsOf(({ road }) => road.evaluation.visits[road.visit]!.step)).toEqual([...visitSteps, ...visitEnds].sort());
    expect(stepsOf(({ road }) => road.evaluation.studies[first(road)]!.step)).toEqual([...studySteps, ...studyEnds].sort());
    // An order without a study, and one that is not there, nobody can book.
    expect(stepsOf(({ road }) => road.evaluation.order.step)).toEqual(expect.arrayContaining(orderEnds.filter((end) => end !== 'none' && end !== 'empty')));
  });

  it('every action was done, by every role of the practice that may do it', () => {
    const missing = states.slice(0, 1).flatMap(cellsOf).flatMap(({ action, right }) => right.filter((role) => !done.some((d) => d.action === action && d.by === role)).map((role) => `${role} ${action}`));
    expect(missing).toEqual([]);
    expect(actionNames.filter((action) => !done.some((d) => d.action === action))).toEqual([]);
  });

  it('every road was gone', () => {
    // What ends a study by ending its order, or by a death, is seen at the order.
    expect(allRoads.filter((road) => actions[road.action as Action].scope !== 'order' && !isGone(road))).toEqual([]);
  });
});
