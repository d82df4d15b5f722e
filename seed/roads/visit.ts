import { allNo } from './book-dog.js';
import { factsOf, perform, type Road } from './road.js';

/** Invented weights, the same for the same dog. */
export const weightOf = ({ dog }: Road): number => (dog.breed === 'Marsh Mastiff' || dog.breed === 'Bargeman’s Dog' ? 48 : 19) + (dog.ageDays % 40) / 10;

/** Comes in: scanned, weighed, and asked again how it is. */
export async function admitDog(road: Road): Promise<void> {
  const { nurse } = road.lane;
  await perform(road, nurse, 'admit', road.visit, { weightKg: weightOf(road), bodyCondition: 5, fastedHours: 10 });
  await scanDog(road, 'admission');
  await perform(road, nurse, 'giveAnswers', road.visit, { stage: 'admission', answers: allNo });
}

export async function scanDog(road: Road, place: 'admission' | 'table', numbers = [road.dog.transponder]): Promise<void> {
  await perform(road, place === 'table' ? road.lane.operator : road.lane.nurse, 'scanDog', road.visit, { place, numbers, passes: 1, readers: 1 });
}

export async function examine(road: Road, statusClass = 1): Promise<void> {
  await perform(road, road.lane.vet, 'examine', road.visit, { statusClass, findings: 'Heart and lungs without findings, temperature taken.' });
}

/** The vet’s plan. The medicine is invented, so that no number in the demo can be taken for a dose. */
export async function signPlan(road: Road): Promise<void> {
  await perform(road, road.lane.vet, 'signPlan', road.visit, {
    kind: 'first', vetPresent: true, weightKg: weightOf(road),
    drugs: [{ drug: 'Example sedative (invented)', route: 'as the vet decides', dose: 1, doseUnit: 'mg/kg', concentration: 100, concentrationUnit: 'mg/mL', resolutionMl: 0.01 }],
  });
}

/** Examined, plan signed, asleep; ends at the first reading. */
export async function sedate(road: Road): Promise<void> {
  await examine(road);
  await signPlan(road);
  road.clock.advance({ minutes: 4 });
  await startSedation(road);
  await watch(road, 1);
}

export async function startSedation(road: Road): Promise<void> {
  const plan = factsOf(road, 'planSigned').filter((f) => f.visit === road.visit).at(-1)!.plan;
  const amountMl = Number((weightOf(road) / 100).toFixed(2));
  await perform(road, road.lane.nurse, 'recordDrug', road.visit, { event: 'drawn', drug: 'Example sedative (invented)', batch: 'EX-0001', amountMl });
  await perform(road, road.lane.vet, 'startSedation', road.visit, { plan });
  await perform(road, road.lane.nurse, 'recordDrug', road.visit, { event: 'given', drug: 'Example sedative (invented)', batch: 'EX-0001', amountMl });
}

/** Readings, four minutes apart. */
export async function watch(road: Road, times: number): Promise<void> {
  for (let i = 0; i < times; i++) {
    road.clock.advance({ minutes: 4 });
    await readNow(road);
  }
}

/** Figures of a quiet sleep, invented. */
export async function readNow(road: Road): Promise<void> {
  const n = factsOf(road, 'readingTaken').length;
  await perform(road, road.lane.nurse, 'recordReading', road.visit, { device: 'ward', heartRate: 74 - (n % 3) * 2, breaths: 14 + (n % 2), spo2: 97, temperature: 38.1, gums: 'pink' });
}

export async function signRecovery(road: Road): Promise<void> {
  await watch(road, 2);
  await perform(road, road.lane.nurse, 'signRecovery', road.visit, { signs: ['awake', 'stands', 'swallows', 'warm', 'gums', 'breathing', 'comfortable'] });
}

export async function goHome(road: Road): Promise<void> {
  await perform(road, road.lane.nurse, 'giveSheet', road.visit, { to: road.dog.person.name });
  road.clock.advance({ minutes: 6 });
  await perform(road, road.lane.nurse, 'sendHome', road.visit, { with: road.dog.person.name });
}

/** Awake, sheet explained, collected. */
export async function recover(road: Road): Promise<void> {
  await signRecovery(road);
  road.clock.advance({ minutes: 12 });
  await goHome(road);
}
