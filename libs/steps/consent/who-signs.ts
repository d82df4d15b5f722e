import { asLanguage } from '#libs/words/languages';
import { localDay } from '#libs/pathway/zones';
import { t } from '#libs/words/spoken';
import { spokenDay } from '../record/day-words.js';
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
    return { signed: { signer: given.signer, signerRole: given.signerRole }, detail: { name, ...(await shownIn(work, given.signer)) } };
  }
  const authority = await standingAuthority(work, given, name, about);
  return { signed: { signer: given.signer, signerRole: given.signerRole, authority: authority.id, for: authority.ownerId }, detail: { name, authority: `For ${await personName(work, authority.ownerId)}: ${authority.evidence}` } };
}

/** In which language somebody read what they sign on their own page; at the practice they are shown the screens of the house. */
async function shownIn({ tx, actor }: Work, signer: string): Promise<{ language?: string }> {
  if (actor.roles[0] !== 'owner') return {};
  const person = await tx.person.findUnique({ where: { id: signer }, select: { language: true } });
  return { language: asLanguage(person?.language) };
}

async function refuseStranger({ tx, order }: Work, signer: string, name: string): Promise<void> {
  const owns = await tx.dogRole.findFirst({ where: { dogId: order.dog, personId: signer, role: { in: ['owner', 'coOwner'] }, until: null }, select: { id: true } });
  if (!owns) throw badInput('signer', t('{name} is not an owner of this dog in the register. An owner signs, or an agent with a stored authority.', { name }));
}

async function standingAuthority({ tx, order, now }: Work, { signer, authority }: Given, name: string, about: string) {
  const today = localDay(now.toISOString(), order.rules.practices[order.practice]?.zone ?? 'UTC');
  if (!authority) throw badInput('authority', t('{name} signs as an agent: choose the stored authority. There is none yet? Write it down on the dog’s page first.', { name }));
  const row = UUID.test(authority) ? await tx.authority.findFirst({ where: { id: authority, dogId: order.dog } }) : null;
  if (!row || row.agentId !== signer) throw badInput('authority', t('This is no authority of {name} for this dog. Write it down on the dog’s page first.', { name }));
  const [from, until] = [row.from, row.until].map((d) => d.toISOString().slice(0, 10)) as [string, string];
  if (row.endedAt || today < from || today > until) throw badInput('authority', t('The authority of {name} {which}. An owner signs, or gives a new one.', { name, which: row.endedAt ? t('was ended') : t('holds from {from} to {until}', { from: spokenDay(from), until: spokenDay(until) }) }));
  if (!row.covers.includes(about)) throw badInput('authority', t('The authority of {name} does not cover this. An owner signs, or gives a wider one.', { name }));
  return row;
}

const UUID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i;
