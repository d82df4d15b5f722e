import type { z } from 'zod';
import { randomUUID } from 'node:crypto';
import { newWebhook, type Webhooks } from '#libs/contracts/integrations';
import { t } from '#libs/words/spoken';
import type { Tx } from '#libs/platform/database/db';
import { addToOutbox } from '#libs/platform/database/outbox';
import { AddressRefusedError } from '#libs/platform/outgoing/address-refused-error';
import type { Outgoing } from '#libs/platform/outgoing/outgoing';
import { newToken } from '#libs/platform/passwords/token';
import { aboutSecret } from '#libs/platform/secrets/about';
import type { WithSecrets } from '#libs/platform/secrets/with-secrets';
import { noteChange } from '#libs/register/note-change';
import { managersOnly } from '#libs/register/who-may';
import type { Actor } from '../record/actor.js';
import type { StepDeps } from '../record/step-deps.js';
import { badInput, notFound } from '../record/step-error.js';
import { webhooksIn } from './webhooks-in.js';

type Deps = StepDeps & WithSecrets & { outgoing: Pick<Outgoing, 'check'> };

/** How long the secret before still signs, so that nothing is missed while the other program is told the new one. Our own choice. */
const OVERLAP_HOURS = 24;

export function readWebhooks(deps: Deps, actor: Actor): Promise<Webhooks> {
  managersOnly(actor);
  return deps.db.practice(actor.practice, (tx) => webhooksIn(tx, deps, actor.practice));
}

export async function makeWebhook(deps: Deps, actor: Actor, { name, address, events }: z.output<typeof newWebhook>): Promise<Webhooks> {
  managersOnly(actor);
  await deps.outgoing.check(address).catch((error: unknown) => {
    throw error instanceof AddressRefusedError ? badInput('address', t.said(error.said)) : error;
  });
  const { token: secret } = newToken();
  return change(deps, actor, async (tx) => {
    const id = randomUUID();
    await tx.$executeRaw`INSERT INTO webhook (id, practice_id, name, address, events, secret, at, by, by_name)
      VALUES (${id}::uuid, ${actor.practice}::uuid, ${name}, ${address}, ${[...new Set(events)]}::text[], ${deps.secrets.seal(secret, aboutSecret.webhook(id))}, ${deps.clock.now()}, ${actor.id}, ${actor.name})`;
    await noteChange(tx, actor, 'makeWebhook', id, { webhook: name, events });
    return { name, secret };
  });
}

export function endWebhook(deps: Deps, actor: Actor, webhook: string): Promise<Webhooks> {
  managersOnly(actor);
  return change(deps, actor, async (tx) => {
    const count = await tx.$executeRaw`UPDATE webhook SET ended_at = ${deps.clock.now()}, ended_by_name = ${actor.name} WHERE id = ${webhook}::uuid AND practice_id = ${actor.practice}::uuid AND ended_at IS NULL`;
    if (count === 0) throw notFound();
    await noteChange(tx, actor, 'endWebhook', webhook);
    return null;
  });
}

export function changeSecret(deps: Deps, actor: Actor, webhook: string): Promise<Webhooks> {
  managersOnly(actor);
  const { token: secret } = newToken();
  return change(deps, actor, async (tx) => {
    const until = new Date(deps.clock.now().getTime() + OVERLAP_HOURS * 3_600_000);
    const [row] = await tx.$queryRaw<{ changed: boolean }[]>`SELECT app.change_webhook_secret(${webhook}::uuid, ${deps.secrets.seal(secret, aboutSecret.webhook(webhook))}, ${until}) AS changed`;
    if (!row?.changed) throw notFound();
    await noteChange(tx, actor, 'changeWebhookSecret', webhook);
    const { name } = await tx.webhook.findUniqueOrThrow({ where: { id: webhook }, select: { name: true } });
    return { name, secret };
  });
}

/** A call that is marked as a test and tells of no order; made once, and not again by itself. */
export function testWebhook(deps: Deps, actor: Actor, webhook: string): Promise<Webhooks> {
  managersOnly(actor);
  return change(deps, actor, async (tx) => {
    const [row] = await tx.$queryRaw<{ delivery: string | null }[]>`SELECT app.test_webhook(${webhook}::uuid, ${deps.clock.now()}) AS delivery`;
    if (!row?.delivery) throw notFound();
    await addToOutbox(tx, 'send-webhook', { delivery: row.delivery }, { dedupe: row.delivery });
    await noteChange(tx, actor, 'testWebhook', webhook);
    return null;
  });
}

/** Begins anew with what was given up, or was delivered and lost over there. What waits goes at its time. */
export function sendAgain(deps: Deps, actor: Actor, delivery: string): Promise<Webhooks> {
  managersOnly(actor);
  return change(deps, actor, async (tx) => {
    const count = await tx.$executeRaw`UPDATE webhook_delivery d SET state = 'waiting', tries = 0, due_at = ${deps.clock.now()} FROM webhook w
      WHERE d.id = ${delivery}::uuid AND d.practice_id = ${actor.practice}::uuid AND d.state IN ('givenUp', 'delivered') AND w.id = d.webhook_id AND w.ended_at IS NULL`;
    if (count === 0) throw notFound();
    await addToOutbox(tx, 'send-webhook', { delivery }, { dedupe: delivery });
    await noteChange(tx, actor, 'sendWebhookAgain', delivery);
    return null;
  });
}

const change = (deps: Deps, { practice }: Actor, work: (tx: Tx) => Promise<Webhooks['secret']>): Promise<Webhooks> =>
  deps.db.practice(practice, async (tx) => {
    const secret = await work(tx);
    return { ...(await webhooksIn(tx, deps, practice)), secret };
  });
