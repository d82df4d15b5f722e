import { isIP } from 'node:net';
import type { z } from 'zod';
import { newMachine, type Machines } from '#libs/contracts/gateway';
import type { Tx } from '#libs/platform/database/db';
import { t } from '#libs/words/spoken';
import type { Actor } from '../actor.js';
import type { RegisterDeps } from '../deps.js';
import { noteChange } from '../note-change.js';
import { knownId, parseInput } from '../parse-input.js';
import { badInput, notFound } from '../refusal.js';
import { managersOnly, staffOnly } from '../who-may.js';
import { orAlreadyThere } from './already-there.js';

type Deps = RegisterDeps & { gatewayPort: number };
/** A network of more addresses than this is none of a practice's. */
const WIDEST = { 4: 16, 6: 48 } as const;

/** The X-ray machines that may talk to this practice, and how they find it. */
export function readMachines(deps: Deps, actor: Actor): Promise<Machines> {
  staffOnly(actor);
  return deps.db.practice(actor.practice, (tx) => machinesIn(tx, deps, actor));
}

export async function addMachine(deps: Deps, actor: Actor, input: z.input<typeof newMachine>): Promise<Machines> {
  managersOnly(actor);
  const { name, aeTitle, address, port } = parseInput(newMachine, input);
  refuseNoNetwork(address);
  return deps.db.practice(actor.practice, async (tx) => {
    const insert = tx.$queryRaw<{ id: string }[]>`INSERT INTO console (practice_id, name, ae_title, address, port, at, by, by_name)
      VALUES (${actor.practice}::uuid, ${name}, ${aeTitle}, network(${address}::inet), ${port ?? null}, ${deps.clock.now()}, ${actor.id}, ${actor.name}) RETURNING id`;
    const [row] = await orAlreadyThere(insert, 'aeTitle', 'A machine of this name and address is there already.');
    await noteChange(tx, actor, 'addMachine', row!.id, { aeTitle, address, ...(port && { port }) });
    return machinesIn(tx, deps, actor);
  });
}

/** From now on it is turned away; what it sent stays. */
export async function endMachine(deps: Deps, actor: Actor, machine: string): Promise<Machines> {
  managersOnly(actor);
  return deps.db.practice(actor.practice, async (tx) => {
    const { count } = await tx.console.updateMany({ where: { id: knownId(machine), practiceId: actor.practice, endedAt: null }, data: { endedAt: deps.clock.now() } });
    if (count === 0) throw notFound();
    await noteChange(tx, actor, 'endMachine', machine);
    return machinesIn(tx, deps, actor);
  });
}

async function machinesIn(tx: Tx, { gatewayPort }: Deps, { practice }: Actor): Promise<Machines> {
  const [title] = await tx.$queryRaw<{ called: string }[]>`SELECT app.called_title(${practice}::uuid) AS called`;
  const rows = await tx.$queryRaw<Machines['rows']>`
    SELECT c.id, c.name, c.ae_title AS "aeTitle", abbrev(c.address) AS address, c.port,
      (SELECT jsonb_build_object('at', to_char(q.at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS"Z"'), 'images', jsonb_array_length(q.asked), 'unsafe', jsonb_array_length(q.failed), 'told', q.told_at IS NOT NULL)
        FROM commitment q WHERE q.console_id = c.id ORDER BY q.at DESC LIMIT 1) AS asked
    FROM console c WHERE c.practice_id = ${practice}::uuid AND c.ended_at IS NULL ORDER BY c.name`;
  return { called: title!.called, port: gatewayPort, rows };
}

function refuseNoNetwork(address: string): void {
  const [host, bits] = address.split('/') as [string, string | undefined];
  const version = isIP(host) as 0 | 4 | 6;
  if (version === 0 || (bits !== undefined && Number(bits) > (version === 4 ? 32 : 128))) throw badInput('address', t('{address} is no IP address. Write one such as 192.168.10.20, as it stands in the machine’s settings.', { address }));
  if (bits !== undefined && Number(bits) < WIDEST[version]) throw badInput('address', t('{address} is more than the network of one practice. Write the machine’s own address, or a network such as 192.168.10.0/24.', { address }));
}
