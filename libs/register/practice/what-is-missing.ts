import type { PracticeScreen } from '#libs/contracts/register';
import { currentProtocols } from '#libs/science/protocols/catalogue';
import { t } from '#libs/words/spoken';
import { anybodyAccredited } from './accredited.js';
import { unpriced } from './prices-of.js';

type Known = Omit<PracticeScreen, 'missing'>;

const textNeeded: [PracticeScreen['texts'][number]['kind'], string][] = [
  ['advice', 'No advice for the days before a visit is approved. A vet adds it under Texts.'],
  ['consentSedation', 'No text for the consent to sedation is approved. A vet adds it under Texts.'],
  ['consentSendAll', 'No text for the consent to sending every film is approved. A vet adds it under Texts.'],
  ['consentStatistics', 'No text for the use in the breed’s statistics is approved. A vet adds it under Texts.'],
  ['goingHome', 'No going-home text is approved; without it no dog goes home. A vet adds it under Texts.'],
];

/** What stands between this practice and its first dog, in the order in which it is best done. */
export function whatIsMissing(known: Known, today: string): string[] {
  const staff = known.staff.filter((s) => s.active);
  const has = (role: string) => staff.some((s) => s.roles.includes(role as never));
  const lines: string[] = [];
  if (!has('vet')) lines.push(t('No vet yet. Add one under Staff.'));
  if (!has('nurse')) lines.push(t('No nurse yet who watches over a sleeping dog. Add one under Staff.'));
  if (!has('radiographer') && staff.filter((s) => s.roles.includes('vet')).length < 2) lines.push(t('Nobody takes the views. Add a radiographer, or a second vet, under Staff.'));
  if (!known.rooms.some((r) => r.kind === 'xray')) lines.push(t('No X-ray room yet. Add one under Rooms.'));
  if (!known.equipment.some((e) => e.kind === 'xray' && e.checkedUntil >= today)) lines.push(t('No X-ray machine with a check that is still good. Add it, or its latest check, under Equipment.'));
  if (unpriced(known.prices)) lines.push(t('No prices yet, so no estimate can be read out. Set them under Prices.'));
  if (known.centres.length === 0) lines.push(t('No grading centre yet. Add one under Centres.'));
  for (const [kind, words] of textNeeded) if (!known.texts.some((text) => text.kind === kind)) lines.push(t.known(words));
  return [...lines, ...studiesWithout(known, today)];
}

/** A study that a centre would read and nobody here may take, or for which a device is missing. */
function studiesWithout(known: Known, today: string): string[] {
  return currentProtocols()
    .filter((p) => known.centres.some((c) => c.protocols.includes(p.code)))
    .flatMap((p) => {
      const device = p.equipment.filter((kind) => kind !== 'xray').find((kind) => !known.equipment.some((e) => e.kind === kind && e.checkedUntil >= today));
      if (device) return [t('{study} cannot be booked: no {device} with a check that is still good. Other studies can.', { study: t.known(p.deskName), device: t.known(equipmentWords[device] ?? device) })];
      const held = anybodyAccredited(known.accreditations, p.code, today);
      return p.needsAccreditation && !held ? [t('{study} cannot be booked: nobody is accredited for it. Other studies can.', { study: t.known(p.deskName) })] : [];
    });
}

export const equipmentWords: Record<string, string> = { xray: 'X-ray machine', distractionDevice: 'distraction device', loadFrame: 'load frame', monitor: 'monitor' };
