import type { NextAction, OrderScreen, VisitView } from '#libs/contracts/screens/order';
import type { Waiting, Witnessed } from './witnessed.js';
import { t } from '../words/t.js';
import type { PageSentence } from '#libs/words/de/staff/page-words';
import { plain } from '../design/format.js';

const HERE: PageSentence = 'waits on this tablet';

/** The order as it will be once the server has what waits here, as far as hands beside the dog need it. */
export const asIfStored = (screen: OrderScreen, waiting: readonly Waiting[]): OrderScreen => waiting.filter((w) => !w.refused).reduce(withOne, screen);

function withOne(screen: OrderScreen, { action, on, at, input }: Waiting): OrderScreen {
  switch (action) {
    case 'recordReading':
      return visit(screen, on, (v) => ({ readings: [...v.readings, { at, by: t(HERE), values: input, waits: true }] }));
    case 'recordEvent':
      return visit(screen, on, (v) => ({ events: [...v.events, { at, by: t(HERE), what: String(input.what) }] }));
    case 'recordDrug':
      return visit(screen, on, (v) => ({ drugs: [...v.drugs, { at, by: t(HERE), event: String(input.event), batch: String(input.batch), words: [input.drug, t('{amount} mL', { amount: plain(Number(input.amountMl)) }), input.route].filter(Boolean).map(String).join(', ') }] }));
    case 'stopImaging':
    case 'endImaging':
      return offering(visit(without(screen, on, onlyBefore), on, () => ({ step: 'imaged' })), on, 'signRecovery', 'giveSheet');
    case 'signRecovery':
      return goingHome(visit(without(screen, on, new Set([action])), on, () => ({ step: 'recovered', recovery: { signs: input.signs as string[], by: t(HERE), at } })), on);
    case 'giveSheet':
      return goingHome(without(screen, on, new Set([action])), on);
    case 'sendHome':
      return without(screen, on, new Set([action]));
    case 'scanDog':
      return screen;
  }
}

const visit = (screen: OrderScreen, id: string, change: (v: VisitView) => Partial<VisitView>): OrderScreen => ({ ...screen, visits: screen.visits.map((v) => (v.id === id ? { ...v, ...change(v) } : v)) });

/** Once imaging has ended nothing more is taken, and no dog is kept asleep for it. */
const onlyBefore: ReadonlySet<string> = new Set(['stopImaging', 'endImaging', 'scanDog', 'settleIdentity', 'signPlan', 'topUp', 'takeView']);
const without = (screen: OrderScreen, on: string, gone: ReadonlySet<string>): OrderScreen => ({ ...screen, next: screen.next.filter((n) => !gone.has(n.action) || (n.on.scope === 'visit' && n.on.id !== on)) });

const labels = { signRecovery: 'Sign recovery', giveSheet: 'Give going-home sheet', sendHome: 'Send home' } as const satisfies Partial<Record<Witnessed, PageSentence>>;

/** Whoever takes readings does these too. */
function offering(screen: OrderScreen, on: string, ...actions: (keyof typeof labels)[]): OrderScreen {
  const yours = screen.next.some((n) => n.action === 'recordReading' && n.on.id === on && n.yours);
  const added = actions.map((action): NextAction => ({ action, label: t(labels[action]), on: { scope: 'visit', id: on }, allowed: true, yours, because: [] }));
  return { ...screen, next: [...screen.next.filter((n) => n.on.id !== on || !actions.some((a) => a === n.action)), ...added] };
}

/** A dog leaves awake, and with its sheet. */
function goingHome(screen: OrderScreen, on: string): OrderScreen {
  const v = screen.visits.find((one) => one.id === on);
  const sheetGiven = v?.sheet != null || !screen.next.some((n) => n.action === 'giveSheet' && n.on.id === on);
  return v?.recovery && sheetGiven ? offering(screen, on, 'sendHome') : screen;
}
