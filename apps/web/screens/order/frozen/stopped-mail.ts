import type { OrderScreen } from '#libs/contracts/screens/order';

const toCentre = new Set(['package', 'chase', 'centreTold', 'supplement']);

/** Mail of this order that the silence keeps back or has dropped. */
export const stoppedMail = (screen: OrderScreen): OrderScreen['messages'] =>
  screen.messages.filter((m) => !toCentre.has(m.kind) && ((screen.silent && m.state === 'waiting') || (m.state === 'dropped' && /DEATH|HARM/.test(m.detail ?? ''))));
