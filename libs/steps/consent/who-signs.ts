import { localDay } from '#libs/pathway/zones';
import { shortDay } from '../record/day-words.js';
import { personName } from '../record/person-name.js';
import { badInput } from '../record/step-error.js';
import type { Work } from '../record/work.js';

export type Covered = 'sedation' | 'study' | 'sendAll';
interface Given { signer: string; signerRole: 'owner' | 'agent'; authority?: string | undefined }

/** Whose yes it is, and by what right: an owner's own, or an agent's whose authority is in the record, in force and about this. */
export async function whoSigns(work: Work, given: Given, about: Covered | 'statistics') {
  const name = await personName(work, given.signer);
  if (given.signerRole === 'owner') {
    await refuseStranger(work, given.signer, name);
    return { signed: { signer: given.signer, signerRole: given.signerRole }, detail: { name } };
  }
  const authority = await standingAuthority(work, given, name, about);
  return { signed: { signer: given.signer, signerRole: given.signerRole, authority: authority.id, for: authority.ownerId }, detail: { name, authority: `For ${await personName(work, authority.ownerId)}: ${authority.evidence}` } };
}

async function refuseStranger({ tx, order }: Work, signer: string, name: string): Promise<void> {
  const owns = await tx.dogRole.findFirst({ where: { dogId: order.dog, personId: signer, role: { in: ['owner', 'coOwner'] }, until: null }, select: { id: true } });
  if (!owns) throw badInput('signer', `${name} is not an owner of this dog in the register. An owner signs, or an agent with a stored authority.`);
}

async function standingAuthority({ tx, order, now }: Work, { signer, authority }: Given, name: string, about: string) {
  const today = localDay(now.toISOString(), order.rules.practices[order.practice]?.zone ?? 'UTC');
  if (!authority) throw badInput('authority', `${name} signs as an agent: choose the stored authority. There is none yet? Write it down on the dog’s page first.`);
  const row = UUID.test(authority) ? await tx.authority.findFirst({ where: { id: authority, dogId: order.dog } }) : null;
  if (!row || row.agentId !== signer) throw badInput('authority', `This is no authority of ${name} for this dog. Write it down on the dog’s page first.`);
  const [from, until] = [row.from, row.until].map((d) => d.toISOString().slice(0, 10)) as [string, string];
  if (row.endedAt || today < from || today > until) throw badInput('authority', `The authority of ${name} ${row.endedAt ? 'was ended' : `holds from ${shortDay(from)} to ${shortDay(until)}`}. An owner signs, or gives a new one.`);
  if (!row.covers.includes(about)) throw badInput('authority', `The authority of ${name} does not cover this. An owner signs, or gives a wider one.`);
  return row;
}

const UUID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i;
