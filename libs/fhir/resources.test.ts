import type { DiagnosticReport, ImagingStudy, Observation, Resource } from '@medplum/fhirtypes';
import fc from 'fast-check';
import type { Joint } from '#libs/contracts/common';
import { evaluate } from '#libs/pathway/evaluate';
import { Chooser } from '#libs/pathway/examples/chooser';
import { readExamples } from '#libs/pathway/examples/read';
import { walk } from '#libs/pathway/examples/walk';
import { fact } from '#libs/pathway/examples/random-fact';
import type { Fact } from '#libs/pathway/facts';
import { pictureOf } from '#libs/pathway/picture';
import { sopClasses } from '#libs/dicom/uids';
import { faultsOf } from '#test/support/fhir-definitions';
import { capabilityStatement } from './capability-statement.js';
import { outcome } from './outcome.js';
import { patient, replacedPatient } from './patient.js';
import { relatedPerson } from './related-person.js';
import { currentOf, orderTypes, versionsOf, type OrderType } from './resources.js';
import type { FhirDog, FhirImage, FhirOrder, FhirPerson } from './source.js';

const { examples, rules } = readExamples();
const BASE = 'https://cotyla.example/fhir';
const NOW = '2026-12-01T09:00:00.000Z';

const dog: FhirDog = {
  id: '11111111-1111-4111-8111-111111111111', animalId: 'CO-7Q4X', callName: 'Rusk <&>', breed: 'Karsby Spitz', sex: 'female', neutered: true, birth: { earliest: '2025-03-01', latest: '2025-03-31', precision: 'month' },
  died: '2026-11-30', names: [{ name: 'Rusk of Nowhere', from: '2025-05-01' }, { name: 'Rust', from: '2025-04-01' }], identifiers: [{ kind: 'transponder', value: '999000000000001', from: '2025-05-01', until: null }, { kind: 'none', value: '', from: '2025-05-01', until: null }],
  merged: [{ animalId: 'CO-OLD' }], studBook: [{ book: 'Basin', number: 'B 12' }], practiceName: 'Weirside',
};
const owner: FhirPerson = { role: 'owner', id: '22222222-2222-4222-8222-222222222222', person: 'owner', dog: dog.id, from: '2025-05-01', until: null, name: 'Ada Wist', email: 'ada@wist.example', phone: '1234', address: 'Lane 1', erased: false };

const dicomOf = (n: number, series = '2.25.7'): FhirImage => ({ kind: 'dicom', modality: 'CR', sopClassUid: sopClasses.cr, sopInstanceUid: `2.25.1${n}`, seriesInstanceUid: series });

function orderOf(given: Fact[], joints: Record<string, Joint[]> = {}, more: Partial<FhirOrder> = {}): FhirOrder {
  // Visits are UUIDs in the database, and give the study number of their films.
  const visits = [...new Set(given.flatMap((f) => (f.type === 'visitOpened' ? [f.visit] : [])))];
  const facts = JSON.parse(visits.reduce((text, visit, n) => text.replaceAll(`"visit":"${visit}"`, `"visit":"00000000-0000-4000-8000-${String(n).padStart(12, '0')}"`), JSON.stringify(given))) as Fact[];
  const none: Joint[] = [{ joint: 'left', reason: 'position' }, { joint: 'right', reason: 'position' }];
  return {
    id: '33333333-3333-4333-8333-333333333333', accession: 'WS26-1', changed: NOW, dog, picture: pictureOf(facts, rules), evaluation: evaluate(facts, NOW, rules), practices: { 'p-mill': { name: 'Mill', zone: 'Europe/Vienna' } }, centres: {},
    joints: new Map(facts.flatMap((f) => (f.type === 'resultArrived' ? [[f.result, joints[f.result] ?? none] as const] : []))), standings: new Map(), people: [owner], base: BASE, images: new Map(facts.flatMap((f, n) => (f.type === 'exposureTaken' ? [[f.image, n % 2 ? { kind: 'png' } : dicomOf(n)] as const] : []))), ...more,
  };
}
const all = (order: FhirOrder): Resource[] => orderTypes.flatMap((type) => versionsOf(order, type));
const faults = (resources: Resource[]) => resources.flatMap((resource) => faultsOf(resource).map((fault) => `${resource.resourceType}: ${fault}`));

let minute = 0;
const at = () => new Date(Date.parse('2026-11-01T08:00:00Z') + minute++ * 60_000).toISOString();
const say = <T extends Fact['type']>(type: T, body: object): Fact => {
  const when = at();
  return fact(type, body as never, { id: `x${minute}`, at: when, rec: when, by: 'a' });
};
const arrived = (result: string, ref = 'ref-1') => say('resultArrived', { study: 's1', result, ref, channel: 'page', reading: 'first', valuesHash: result, joints: [], detail: { reader: 'N. Reader' } });
const accepted = (result: string) => say('resultAccepted', { study: 's1', result });
const withdrawn = (result: string) => say('resultWithdrawn', { study: 's1', result, why: 'otherDog' });
const read = (protocol: string, ...rest: Fact[]): Fact[] => [
  say('orderOpened', { order: 'o', dog: 'd', numbers: [], addressees: [], birth: { date: '2025-01-10', precision: 'day' } }), say('studyAdded', { study: 's1', protocol, version: '1', centre: 'c' }), say('visitOpened', { visit: 'v1', studies: ['s1'], why: 'first' }),
  say('exposureTaken', { visit: 'v1', exposure: 'e1', image: 'h', view: 'vdExtended', serves: ['s1'], imageDay: '2026-11-01', people: ['a'] }), say('packageSealed', { study: 's1', package: 'p1', exposures: ['e1'], manifest: 'm' }), say('packageSent', { study: 's1', package: 'p1', send: 'n1', centre: 'c', channel: 'page' }), ...rest,
];
const one = <T extends Resource>(order: FhirOrder, type: OrderType, id: string): T => currentOf(order, type).find((r) => r.id === id) as T;

describe('what is told of an order', () => {
  it('has no fault by the published definitions, wherever the order stands', () => {
    for (const { name, facts } of examples) expect({ name, faults: faults(all(orderOf(facts))) }).toEqual({ name, faults: [] });
  });

  it('has none on any road that an order can take', () => {
    fc.assert(fc.property(fc.nat(), fc.integer({ min: 20, max: 60 }), (seed, strides) => {
      const walked = walk(new Chooser(seed), strides, rules).at(-1)?.after.facts ?? [];
      expect(faults(all(orderOf([...walked])))).toEqual([]);
    }), { numRuns: 25 });
  });

  it('the validators find what is wrong', () => {
    expect(faultsOf({ resourceType: 'Patient', id: 'x', gender: 'bull' } as never)).not.toEqual([]);
    expect(faultsOf({ resourceType: 'Observation', id: 'x', status: 'final', code: { text: 'y' }, valueString: 'a', dataAbsentReason: { text: 'b' } })).not.toEqual([]);
  });
});

describe('dogs and people', () => {
  it('a dog carries what the standard says of animals, and nobody’s name', () => {
    const told = patient(dog, BASE);
    expect(faults([told, replacedPatient(dog, 'kept', BASE), relatedPerson(owner), relatedPerson({ ...owner, erased: true, until: '2026-01-01' }), outcome('invalid', 'Words.'), capabilityStatement(BASE, NOW)])).toEqual([]);
    expect(told.extension?.[0]?.url).toBe('http://hl7.org/fhir/StructureDefinition/patient-animal');
    expect(JSON.stringify(told)).not.toContain('Wist');
  });

  it('a birth is told no more exactly than it is known', () => {
    const born = (earliest: string, latest: string) => patient({ ...dog, birth: { earliest, latest, precision: 'estimate' } }, BASE).birthDate;
    expect([born('2025-03-04', '2025-03-04'), born('2025-03-01', '2025-03-31'), born('2025-01-01', '2025-12-31'), born('2024-06-01', '2025-05-31')]).toEqual(['2025-03-04', '2025-03', '2025', undefined]);
  });

  it('an erased person is a role without a name', () => {
    expect(JSON.stringify(relatedPerson({ ...owner, erased: true }))).not.toMatch(/Wist|1234|Lane/);
  });

  it('who signed is told to whoever may know owners, and to nobody else', () => {
    const facts = read('hipLaxity', say('consentGiven', { purpose: 'study', study: 's1', textVersion: 'lax-1', answer: 'yes', signer: 'owner', signerRole: 'owner' }));
    expect(JSON.stringify(all(orderOf(facts)))).toContain('Wist');
    expect(JSON.stringify(all(orderOf(facts, {}, { people: [] })))).not.toContain('Wist');
  });
});

describe('films', () => {
  const taken = (exposure: string, view: string) => say('exposureTaken', { visit: 'v1', exposure, image: exposure, view, serves: ['s1'], imageDay: '2026-11-01', people: ['a'] });
  const opened = (protocol: string) => read(protocol).slice(0, 3);
  const studyOf = (facts: Fact[], images: [string, FhirImage][]) => {
    const order = orderOf(facts, {}, { images: new Map(images) });
    expect(faults(all(order))).toEqual([]);
    return currentOf(order, 'ImagingStudy')[0] as ImagingStudy;
  };

  it('of DICOM files stand in the series of their files, each with its own numbers', () => {
    const told = studyOf([...opened('hipLaxity'), taken('e1', 'vdExtended'), taken('e2', 'vdCompression'), taken('e3', 'vdDistraction')], [['e1', dicomOf(1)], ['e2', dicomOf(2)], ['e3', dicomOf(3, '2.25.8')]]);
    expect(told).toMatchObject({ numberOfSeries: 2, numberOfInstances: 3, modality: [{ code: 'CR' }] });
    expect(told.series).toMatchObject([
      { uid: '2.25.7', number: 1, numberOfInstances: 2, bodySite: { code: '24136001' }, laterality: { code: '51440002' }, instance: [{ uid: '2.25.11', number: 1, sopClass: { code: `urn:oid:${sopClasses.cr}` } }, { uid: '2.25.12', number: 2 }] },
      { uid: '2.25.8', number: 2, numberOfInstances: 1, instance: [{ uid: '2.25.13' }] },
    ]);
  });

  it('of pictures are what they leave as: Digital X-Ray where a size was said and not taken back', () => {
    const sized = (exposure: string, size: { pixelMm: number; right: string; lower: string } | null) => say('filmSized', { exposure, size });
    const size = { pixelMm: 0.14, right: 'tail', lower: 'toes' };
    const told = studyOf(
      [...opened('elbow'), taken('e1', 'mlFlexedLeft'), taken('e2', 'mlFlexedRight'), taken('e3', 'ccRight'), sized('e1', size), sized('e2', size), sized('e2', null)],
      [['e1', { kind: 'png' }], ['e2', { kind: 'jpeg' }], ['e3', { kind: 'png' }]]);
    expect(told.series).toMatchObject([
      { modality: { code: 'DX' }, bodySite: { code: '16953009' }, laterality: { code: '419161000' }, instance: [{ sopClass: { code: `urn:oid:${sopClasses.dxForPresentation}` } }] },
      { modality: { code: 'OT' }, laterality: { code: '419465000' }, numberOfInstances: 2, instance: [{ sopClass: { code: `urn:oid:${sopClasses.secondaryCapture}` } }, {}] },
    ]);
    expect(new Set(told.series!.flatMap(({ instance }) => instance!.map(({ uid }) => uid))).size).toBe(3);
  });

  it('whose numbers are not known are counted, and no number is made up', () => {
    const told = studyOf([...opened('hipLaxity'), taken('e1', 'vdExtended'), taken('e2', 'vdCompression')], [['e1', { kind: 'dicom', sopClassUid: sopClasses.cr, sopInstanceUid: 'not one' }], ['e2', dicomOf(2)]]);
    expect(told.numberOfInstances).toBe(2);
    expect(told.numberOfSeries).toBeUndefined();
    expect(told.series).toMatchObject([{ numberOfInstances: 1 }]);
  });
});

describe('a result', () => {
  const values: Joint[] = [{ joint: 'left', value: 0.4, findings: { arthrosis: true } }, { joint: 'right', value: 0.31 }];

  it('carries each joint’s value with its decimals, interval and number of dogs behind it', () => {
    const order = orderOf(read('hipLaxity', arrived('r1'), accepted('r1')), { r1: values });
    const left = one<Observation>(order, 'Observation', 's1-left');
    expect(left).toMatchObject({ status: 'final', valueQuantity: { value: 0.4, system: 'http://unitsofmeasure.org', code: '1' }, bodySite: { text: 'left hip' } });
    expect(left.text?.div).toContain('0.40');
    // SD 0.15, ICC 0.94: 1.96 standard errors are 0.072.
    expect(left.component?.find((c) => c.valueRange)?.valueRange).toMatchObject({ low: { value: 0.33 }, high: { value: 0.47 } });
    expect(left.component?.find((c) => c.valueInteger)?.valueInteger).toBe(31);
    expect(left.component?.find((c) => c.valueBoolean)).toMatchObject({ valueBoolean: true });
    expect(one<Observation>(order, 'Observation', 's1-dog').valueQuantity).toMatchObject({ value: 0.4 });
    expect(faults(all(order))).toEqual([]);
  });

  it('of one readable joint is "at least", as a number and as a grade that is none', () => {
    const laxity = orderOf(read('hipLaxity', arrived('r1'), accepted('r1')), { r1: [{ joint: 'left', value: 0.4 }, { joint: 'right', reason: 'gasInJoint' }] });
    expect(one<Observation>(laxity, 'Observation', 's1-dog').valueQuantity).toMatchObject({ comparator: '>=', value: 0.4 });
    expect(one<Observation>(laxity, 'Observation', 's1-right')).toMatchObject({ dataAbsentReason: { coding: [{ code: 'unknown' }, { code: 'gasInJoint' }] } });
    const graded = orderOf(read('hipExtended', arrived('r1'), accepted('r1')), { r1: [{ joint: 'left', value: 'C' }, { joint: 'right', reason: 'position' }] });
    const dogs = one<Observation>(graded, 'Observation', 's1-dog').valueCodeableConcept;
    expect(dogs).toMatchObject({ coding: [{ system: 'urn:cotyla:fhir:grade-at-least:hipExtended', code: 'C' }] });
    expect(dogs?.text).toContain('at least');
    const elbow = orderOf(read('elbow', arrived('r1'), accepted('r1')), { r1: [{ joint: 'left', value: '1' }, { joint: 'right', reason: 'notImaged' }] });
    expect(one<Observation>(elbow, 'Observation', 's1-dog')).toMatchObject({ dataAbsentReason: { coding: [{}, { code: 'incomplete' }] } });
    expect(faults([...all(laxity), ...all(graded), ...all(elbow)])).toEqual([]);
  });

  it('is registered, final, amended and withdrawn, and each version can still be read', () => {
    const order = orderOf(read('hipLaxity', arrived('r1'), accepted('r1'), arrived('r2'), accepted('r2'), withdrawn('r2'), withdrawn('r1'), arrived('r3'), accepted('r3')), { r1: values, r2: [{ joint: 'left', value: 0.5 }, { joint: 'right', value: 0.31 }], r3: values });
    const reports = versionsOf(order, 'DiagnosticReport') as DiagnosticReport[];
    expect(reports.map(({ status, meta }) => `${meta!.versionId} ${status}`)).toEqual(['1 registered', '2 final', '3 amended', '4 amended', '5 entered-in-error', '6 amended']);
    const left = (versionsOf(order, 'Observation') as Observation[]).filter(({ id }) => id === 's1-left');
    expect(left.map(({ status, valueQuantity }) => [status, valueQuantity?.value])).toEqual([['final', 0.4], ['amended', 0.5], ['amended', 0.4], ['entered-in-error', 0.4], ['amended', 0.4]]);
    expect(faults(all(order))).toEqual([]);
  });

  it('that nobody has accepted is not told', () => {
    const order = orderOf(read('hipLaxity', arrived('r1')), { r1: values });
    expect(versionsOf(order, 'Observation')).toEqual([]);
    expect(JSON.stringify(all(order))).not.toMatch(/0\.4\b|0\.31/);
  });

  it('stands in its breed with its places and the number of dogs, or says why not', () => {
    const place = { kind: 'place', from: 7, to: 13, n: 240, warning: false, breed: 'Karsby Spitz', age: 'at 12 to 23 months', frozenOn: '2026-11-01', fromYear: 2020, toYear: 2026, unsent: 4, senders: null, ends: { low: 'tightest', high: 'loosest', of: 'hips' }, halvesOneIn: 12, source: 'Smith' } as const;
    const facts = read('hipLaxity', arrived('r1'), accepted('r1'));
    const told = (standing: FhirOrder['standings'] extends ReadonlyMap<string, infer S> ? S : never) => orderOf(facts, { r1: values }, { standings: new Map([['s1', standing]]) });
    const standing = one<Observation>(told(place), 'Observation', 's1-standing');
    expect(standing).toMatchObject({ valueRange: { low: { value: 7 }, high: { value: 13 } } });
    expect(standing.component?.[0]).toMatchObject({ valueInteger: 240 });
    const none = one<Observation>(told({ kind: 'none', why: 'tooFew', region: 'hip', n: 9 }), 'Observation', 's1-standing');
    expect(none).toMatchObject({ dataAbsentReason: { coding: [{}, { code: 'tooFew' }] } });
    expect(faults([standing, none])).toEqual([]);
  });
});
