import type { z } from 'zod';
import type { statedSize } from '#libs/contracts/film-size';
import type { OwnerPage } from '#libs/contracts/screens/owner';
import { findProtocol } from '#libs/science/protocols/catalogue';
import { questions } from '#libs/contracts/common';
import type { Road } from './road.js';
import { openLink, type Session } from './session.js';

const noToAll = Object.fromEntries(questions.map((q) => [q, 'no'])) as Record<(typeof questions)[number], 'no'>;
const WEIGHT = 24;
/** Invented, so that no number here can be taken for a dose. */
const DRUG = 'Example sedative (invented)';

/** From the mail that confirms the n-th booking to the last signature, on the owner's page. */
export async function ownerSigns(road: Road, n = 1): Promise<Session> {
  const owner = await openLink(road.server.url, await road.server.mail.wait(road.email, new RegExp(`^${road.dog.call}: (visit on|Termin am) `), n));
  await signAll(road, owner);
  return owner;
}

/** Everything that the page asks for, answered and signed. */
export async function signAll(road: Road, owner: Session): Promise<void> {
  const page = await owner.read<OwnerPage>('/api/owner');
  const visit = page.visit!.id;
  await owner.send('/api/owner/answers', { visit, answers: Object.fromEntries(page.questions.map((q) => [q.question, 'no'])) });
  await owner.send('/api/owner/estimate', { visit, totalMinor: page.estimate!.totalMinor });
  await owner.send('/api/owner/consents', {
    visit, typedName: road.dog.person.name, sendAll: 'yes', statistics: 'yes', studies: page.consents.studies.map(({ study }) => ({ study, answer: 'yes' })),
    sedation: { answer: 'yes', emergency: { resuscitate: 'yes', limitMinor: 60_000, number: road.dog.person.phone, collectors: [road.dog.person.name] } },
  });
  await road.look();
}

export async function admit(road: Road): Promise<void> {
  const { id } = road.visit;
  await road.act('nurse', 'admit', id, { weightKg: WEIGHT, bodyCondition: 5, fastedHours: 10 });
  await road.act('nurse', 'scanDog', id, { place: 'admission', numbers: [road.dog.transponder], passes: 1, readers: 1 });
  await road.act('nurse', 'giveAnswers', id, { stage: 'admission', answers: noToAll });
}

export async function sedate(road: Road): Promise<void> {
  await putToSleep(road);
  await road.act('operator', 'scanDog', road.visit.id, { place: 'table', numbers: [road.dog.transponder], passes: 1, readers: 1 });
}

/** Examined, planned, asleep and watched; not yet on the table. */
export async function putToSleep(road: Road): Promise<void> {
  const { id } = road.visit;
  await road.act('vet', 'examine', id, { statusClass: 1, findings: 'Heart and lungs without findings.' });
  await road.act('vet', 'signPlan', id, { kind: 'first', vetPresent: true, weightKg: WEIGHT, drugs: [{ drug: DRUG, route: 'as the vet decides', dose: 1, doseUnit: 'mg/kg', concentration: 100, concentrationUnit: 'mg/mL', resolutionMl: 0.01 }] });
  await road.act('nurse', 'recordDrug', id, { event: 'drawn', drug: DRUG, batch: 'EX-0001', amountMl: 0.24 });
  await road.act('vet', 'startSedation', id, { plan: road.visit.plans.at(-1)!.id });
  await road.act('nurse', 'recordDrug', id, { event: 'given', drug: DRUG, batch: 'EX-0001', amountMl: 0.24 });
  await watch(road);
}

/** A reading, four minutes on. */
export async function watch(road: Road): Promise<void> {
  road.server.clock.advance({ minutes: 4 });
  await road.act('nurse', 'recordReading', road.visit.id, { device: 'ward', heartRate: 74, breaths: 14, spo2: 97, temperature: 38.1, gums: 'pink' });
}

/** One film for every study of the order that has this view. */
export async function takeView(road: Road, view: string, kind: 'png' | 'jpeg' | 'dicom' = 'png', more: { as?: (film: Buffer) => Buffer; size?: z.input<typeof statedSize> } = {}): Promise<string> {
  await watch(road);
  const serves = road.screen.studies.filter((s) => findProtocol(s.protocol, s.version)!.views.some((v) => v.code === view)).map((s) => s.id);
  const image = await road.upload(kind, more.as);
  await road.act('operator', 'takeView', serves[0]!, { view, serves, image, marker: 'L', people: [road.slot.operator.id, road.slot.nurse.id], technique: { kv: 66, mas: 12, distanceCm: 110 }, ...(more.size && { size: more.size }) });
  return road.screen.exposures.at(-1)!.id;
}

export async function judge(road: Road, exposure: string, verdict: 'accept' | 'retake', reasons: string[] = []): Promise<void> {
  for (const study of road.screen.exposures.find((e) => e.id === exposure)!.serves) await road.act('operator', 'judgeView', study, { exposure, verdict, reasons });
}

/** Every view that is still asked for, each taken once and accepted. */
export async function image(road: Road): Promise<void> {
  const wanted = () => road.screen.studies.flatMap((s) => s.views.filter((v) => v.required && !v.accepted).map((v) => v.view));
  for (let view = wanted()[0]; view; view = wanted()[0]) await judge(road, await takeView(road, view), 'accept');
  await road.act('operator', 'endImaging', road.visit.id, {});
}

export async function goHome(road: Road): Promise<void> {
  const { id } = road.visit;
  await watch(road);
  await road.act('nurse', 'signRecovery', id, { signs: ['awake', 'stands', 'swallows', 'warm', 'gums', 'breathing', 'comfortable'] });
  await road.act('nurse', 'giveSheet', id, { to: road.dog.person.name });
  await road.act('nurse', 'sendHome', id, { with: road.dog.person.name });
}

/** Booked, signed, imaged and at home again. */
export async function throughTheVisit(road: Road): Promise<Session> {
  const owner = await ownerSigns(road);
  await road.untilVisit();
  await admit(road);
  await sedate(road);
  await image(road);
  await goHome(road);
  return owner;
}
