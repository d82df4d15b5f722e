import { randomUUID } from 'node:crypto';
import type { z } from 'zod';
import { newChannel, type Channels } from '#libs/contracts/dispatch';
import { t } from '#libs/words/spoken';
import type { Tx } from '#libs/platform/database/db';
import { AddressRefusedError } from '#libs/platform/outgoing/address-refused-error';
import type { Outgoing } from '#libs/platform/outgoing/outgoing';
import { aboutSecret } from '#libs/platform/secrets/about';
import type { WithSecrets } from '#libs/platform/secrets/with-secrets';
import type { Actor } from '../actor.js';
import type { RegisterDeps } from '../deps.js';
import { noteChange } from '../note-change.js';
import { knownId, parseInput } from '../parse-input.js';
import { badInput, notFound } from '../refusal.js';
import { managersOnly, staffOnly } from '../who-may.js';

/** By which way this practice's films go to each centre; no other practice sees or changes it. */
export function readChannels(deps: RegisterDeps & WithSecrets, actor: Actor): Promise<Channels> {
  staffOnly(actor);
  return deps.db.practice(actor.practice, (tx) => channelsIn(tx, deps));
}

/** A new row that holds from now on; what is on its way goes on by the channel that it was sent by. */
export async function setChannel(deps: RegisterDeps & WithSecrets & { outgoing: Outgoing }, actor: Actor, centre: string, input: z.input<typeof newChannel>): Promise<Channels> {
  managersOnly(actor);
  const { secret, ...channel } = told(parseInput(newChannel, input));
  if (channel.address) await refuseAddress(deps.outgoing, channel.address);
  return deps.db.practice(actor.practice, async (tx) => {
    if (!(await tx.centre.findUnique({ where: { id: knownId(centre) }, select: { id: true } }))) throw notFound();
    const id = randomUUID();
    await tx.centreChannel.create({ data: { id, practiceId: actor.practice, centreId: centre, kind: channel.kind, address: channel.address ?? null, bucket: channel.bucket ?? null, region: channel.region ?? null, account: channel.account ?? null, hasSecret: secret !== undefined, at: deps.clock.now(), by: actor.id, byName: actor.name } });
    // without RETURNING, which would read it back
    if (secret !== undefined) await tx.$executeRaw`INSERT INTO centre_channel_secret (channel_id, secret) VALUES (${id}::uuid, ${deps.secrets.seal(secret, aboutSecret.channel(id, channel.address))})`;
    await noteChange(tx, actor, 'setChannel', centre, { kind: channel.kind });
    return channelsIn(tx, deps);
  });
}

/** A mail has nothing to be told: what was entered for another kind before is left out. */
const told = (channel: z.output<typeof newChannel>): z.output<typeof newChannel> => (channel.kind === 'link' || channel.kind === 'media' ? { kind: channel.kind } : channel);

async function refuseAddress(outgoing: Outgoing, address: string): Promise<void> {
  await outgoing.check(address).catch((error: unknown) => {
    throw error instanceof AddressRefusedError ? badInput('address', t.said(error.said)) : error;
  });
}

export async function channelsIn(tx: Tx, { secrets }: WithSecrets): Promise<Channels> {
  const rows = await tx.$queryRaw<(Omit<Channels['rows'][number], 'secretLost'> & { keyId: string | null })[]>`
    SELECT DISTINCT ON (centre_id) id, centre_id AS centre, kind, address, bucket, region, account, has_secret AS secret, (SELECT s.key_id FROM centre_channel_secret s WHERE s.channel_id = centre_channel.id) AS "keyId", to_char(at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS"Z"') AS at, by_name AS "byName",
      (SELECT jsonb_build_object('at', to_char(r.at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS"Z"'), 'byName', r.by_name, 'answer', r.answer, 'status', r.status, 'detail', r.detail) FROM channel_trial r WHERE r.channel_id = centre_channel.id ORDER BY r.at DESC, r.id LIMIT 1) AS trial
    FROM centre_channel ORDER BY centre_id, seq DESC`;
  return { rows: rows.map(({ keyId, ...row }) => ({ ...row, secretLost: !secrets.knows(keyId) })) };
}
