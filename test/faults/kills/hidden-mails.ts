import type { DemoScheme } from '#seed/demo-scheme';
import { readOrderScreen } from '#libs/steps/order-screen/read-order-screen';
import type { StepDeps } from '#libs/steps/record/step-deps';

/** Mails whose outcome a person must know of, and that are not on the page of their order with it. */
export async function hiddenMails(deps: StepDeps, scheme: DemoScheme): Promise<string[]> {
  const hidden: string[] = [];
  const concerned = await deps.db.system('a test looks', (tx) => tx.message.findMany({ where: { state: { in: ['unknown', 'bounced'] }, orderId: { not: null } }, select: { id: true, kind: true, state: true, orderId: true, practiceId: true } }));
  for (const { id, kind, state, orderId, practiceId } of concerned) {
    const house = Object.values(scheme.houses).find((h) => h.id === practiceId)!;
    const { messages } = await readOrderScreen(deps, house.desk, orderId!);
    if (!messages.some((m) => m.id === id && m.state === state && m.detail)) hidden.push(`${kind} ${id} is ${state}, and its order does not say so`);
  }
  return hidden;
}
