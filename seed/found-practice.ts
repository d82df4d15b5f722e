import { randomUUID } from 'node:crypto';
import type { Tx } from '#libs/platform/database/db';
import type { Role as StaffRole } from '#libs/contracts/common';
import type { Role } from '#libs/pathway/facts';
import type { Actor } from '#libs/steps/record/actor';
import { country } from './country.js';
import type { House, Lane } from './demo-scheme.js';
import type { SeedPractice, SeedStaff } from './practices.js';
import { texts } from './texts.js';

interface StaffRow { id: string; schemeId: string; name: string; email: string; passwordHash: string; roles: StaffRole[] }
type MakeStaff = (person: SeedStaff, mail: string, where: { practiceId: string }) => StaffRow;

const days = (from: Date, n: number): Date => new Date(from.getTime() + n * 86_400_000);

export async function foundPractice(tx: Tx, scheme: string, seed: SeedPractice, now: Date, makeStaff: MakeStaff): Promise<House> {
  const id = randomUUID();
  const { name, place, address, phone, letters, mayCertify, prices } = seed;
  const policy = mayCertify ? { ...seed.policy, delegatedUntil: days(now, 500).toISOString().slice(0, 10) } : seed.policy;
  await tx.practice.create({ data: { id, schemeId: scheme, name, place, address, phone, email: `desk@${seed.mail}`, zone: country.zone, letters, mayCertify, prices, policy: policy as object } });
  const staff = seed.staff.map((person) => makeStaff(person, seed.mail, { practiceId: id }));
  await tx.staff.createMany({ data: staff });
  const rooms = seed.xrayRooms.map((room) => ({ id: randomUUID(), practiceId: id, name: room, kind: 'xray' }));
  await tx.room.createMany({ data: [...rooms, { id: randomUUID(), practiceId: id, name: 'Ward', kind: 'ward' }] });
  const devices = seed.equipment.map((e) => ({ ...e, id: randomUUID() }));
  await tx.equipment.createMany({ data: devices.map((e) => ({ id: e.id, practiceId: id, name: e.name, kind: e.kind, checkedUntil: days(now, e.checkedMonthsAhead * 30) })) });
  const manager = staff.find((s) => s.roles.includes('manager'))!;
  await tx.detectorSize.createMany({ data: devices.flatMap((e) => (e.pixelMm ? [{ practiceId: id, equipmentId: e.id, pixelMm: e.pixelMm, at: days(now, -200), by: manager.id, byName: manager.name }] : [])) });
  await tx.accreditation.createMany({
    data: seed.accredited.flatMap(({ staff: operator, protocols }) =>
      protocols.map((protocol) => ({ practiceId: id, staffId: staff.find((s) => s.name === operator)!.id, protocol, from: days(now, -400), until: days(now, 330), evidence: 'Course of the scheme, with twenty films looked at by a reader (invented).' }))),
  });
  const actors = staff.map((s): Actor => ({ id: s.id, name: s.name, roles: s.roles.filter((r): r is StaffRole & Role => r !== 'lead'), practice: id }));
  const withRole = (role: Role): Actor[] => actors.filter((a) => a.roles.includes(role));
  const [vets, nurses, operators] = [withRole('vet'), withRole('nurse'), withRole('radiographer')];
  return {
    id, name, zone: country.zone, prices, desk: withRole('desk')[0]!, manager: withRole('manager')[0]!, vets,
    lanes: rooms.map((room, i): Lane => ({ room: room.id, operator: operators[i]!, nurse: nurses.filter((n) => n !== operators[i])[i]!, vet: vets[i]! })),
    advice: await approveTexts(tx, id, vets[0]!, days(now, -300)),
  };
}

async function approveTexts(tx: Tx, practiceId: string, vet: Actor, approvedAt: Date): Promise<House['advice']> {
  const rows = texts.map((text) => ({ language: 'en', ...text, id: randomUUID(), practiceId, version: '1', approvedBy: vet.id, approvedAt }));
  await tx.approvedText.createMany({ data: rows });
  const advice = rows.filter((row) => row.kind === 'advice');
  return { grown: advice[0]!.id, young: advice[1]!.id };
}
