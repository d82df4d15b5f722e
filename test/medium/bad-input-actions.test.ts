import { randomUUID } from 'node:crypto';
import { actionInputs, actionNames, type ActionName } from '#libs/contracts/actions/all';
import type { OrderScreen } from '#libs/contracts/screens/order';
import { actions, type Action } from '#libs/pathway/actions';
import { complaintOf } from './access-support/complaint.js';
import { mutationsOf } from './access-support/mutations.js';
import { openApi, type OpenApi } from './access-support/open-api.js';
import { sample, shapeOf, type Shape } from './access-support/sample.js';
import { contentOf } from './access-support/tables.js';
import { signIn, type Visitor } from './access-support/visitor.js';

// Booked, consented, asleep, waiting to be sent, with the reader, overdue, read, sent back, and reported.
const DOGS = ['Nettle', 'Basalt', 'Wenna', 'Flint', 'Corrie', 'Quill', 'Cinder', 'Reed', 'Heron'];

let open: OpenApi;
let hedda: Visitor;
/** Actions that were done at all, so that not everything was refused at the door. */
const done = new Set<ActionName>();

beforeAll(async () => {
  open = await openApi(DOGS);
  await open.everywhere((tx) => tx.staff.update({ where: { email: 'hedda@weirside.example' }, data: { roles: ['desk', 'nurse', 'radiographer', 'vet', 'manager'] }, select: { id: true } }));
  hedda = await signIn(open.url, 'hedda@weirside.example');
}, 120_000);
afterAll(() => open.close());

const read = async (order: string) => (await hedda.get(`/api/orders/${order}`)).body as OrderScreen;

/** The order, or its first visit or study: what an action is about. */
function scopeOf(screen: OrderScreen, action: ActionName): string | undefined {
  const { scope } = actions[action as Action];
  return scope === 'order' ? screen.id : (scope === 'visit' ? screen.visits : screen.studies)[0]?.id;
}

/** An input that names what is there, as the form fills itself in. */
function filledIn(screen: OrderScreen, action: ActionName): Record<string, unknown> {
  const shape = shapeOf(actionInputs[action]);
  const input = sample(shape, randomUUID()) as Record<string, unknown>;
  for (const [key, field] of Object.entries(shape.properties ?? {})) {
    const { pick, type } = field as Shape & { pick?: keyof OrderScreen['choices'] };
    const first = pick && screen.choices[pick]?.[0]?.id;
    if (first && key in input) input[key] = type === 'array' ? [first] : first;
  }
  return input;
}

const ask = (screen: OrderScreen, action: ActionName, input: unknown, more: Record<string, unknown> = {}) =>
  hedda.ask({ method: 'POST', url: `/api/orders/${screen.id}/actions/${action}`, headers: { 'content-type': 'application/json' }, body: JSON.stringify({ key: randomUUID(), version: screen.version, on: scopeOf(screen, action), input, ...more }) });

describe('every action refuses an input that its contract refuses, and nothing changes', () => {
  it.each(actionNames)('%s', async (action) => {
    const screen = await read(open.roads.find((r) => r.dog.call === 'Wenna')!.order);
    const refused = mutationsOf(actionInputs[action], filledIn(screen, action)).filter((m) => m.refused && typeof m.body === 'object' && m.body !== null && !Array.isArray(m.body));
    const before = await contentOf(open.owner);
    for (const { what, body } of refused) {
      const complaint = complaintOf(await ask(screen, action, body), `${action}, ${what}`);
      expect({ action, what, code: complaint.code }).toEqual({ action, what, code: 'BAD_INPUT' });
    }
    expect(await contentOf(open.owner)).toEqual(before);
    expect(open.broken).toEqual([]);
  });
});

describe.each(DOGS)('whatever is asked of the order of %s', (dog) => {
  it('is done, or refused with a code and a sentence; nothing breaks', async () => {
    const { order } = open.roads.find((r) => r.dog.call === dog)!;
    for (const action of actionNames) {
      const screen = await read(order);
      const input = filledIn(screen, action);
      // What the contract lets through may still be odd: days far away, signs of other scripts, sums without end.
      const odd = mutationsOf(actionInputs[action], input).filter((m) => !m.refused).map((m) => m.body);
      const some = odd.filter((_, i) => i % Math.ceil(odd.length / 3) === 0);
      for (const [i, body] of [...some, input].entries()) {
        const past = i % 3 === 0 ? { at: '2026-01-01T00:00:00Z' } : {};
        const answer = await ask(i === 0 ? screen : await read(order), action, body, past);
        if (answer.status === 200) done.add(action);
        else complaintOf(answer, `${dog}, ${action}, ${JSON.stringify(body).slice(0, 200)}`);
      }
    }
    expect(open.broken).toEqual([]);
    // And it can still be looked at, whatever has been written into it.
    expect((await hedda.get(`/api/orders/${order}`)).status).toBe(200);
  }, 120_000);
});

it('much of it was done', () => {
  expect(done.size).toBeGreaterThan(30);
});
