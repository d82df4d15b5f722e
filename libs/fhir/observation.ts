import type { Observation, ObservationComponent, Quantity } from '@medplum/fhirtypes';
import type { StudyPicture } from '#libs/pathway/study-picture';
import { findProtocol } from '#libs/science/protocols/catalogue';
import { dogsResult } from '#libs/science/protocols/dogs-result';
import { findingWords } from '#libs/science/protocols/finding-words';
import { standardError } from '#libs/science/protocols/second-look';
import type { JointReading, Protocol } from '#libs/science/protocols/types';
import { formatValue } from '#libs/science/protocols/value';
import { Z95 } from '#libs/science/measurement/measure';
import { absent, concept, extensionUrl, named, narrative, ownConcept, quantity, reference, SNOMED } from './codes.js';
import { reportVersions, type ReportVersion } from './report-versions.js';
import type { FhirOrder } from './source.js';

const REGIONS = { hip: concept(SNOMED, '24136001', 'Hip joint'), elbow: concept(SNOMED, '16953009', 'Elbow joint') };
const SIDES = { left: { system: SNOMED, code: '7771000', display: 'Left' }, right: { system: SNOMED, code: '24028007', display: 'Right' } };

const jointId = (study: string, side: string) => `${study}-${side}`;
const dogId = (study: string) => `${study}-dog`;

export const observationIds = (study: StudyPicture, joints: JointReading[]): string[] => [...joints.map(({ joint }) => jointId(study.id, joint)), dogId(study.id)];

/** What was read in each joint and what it says of the dog, in every version that a report had. */
export function observations(order: FhirOrder, study: StudyPicture): Observation[] {
  const protocol = findProtocol(study.protocol, study.version);
  if (!protocol) return [];
  return reportVersions(study).filter(({ result }) => result).flatMap((version, i) => {
    const joints = order.joints.get(version.result!.result) as JointReading[] | undefined;
    if (!joints) return [];
    const common = commonOf(order, study, version, i + 1);
    return [...joints.map((reading) => ({ ...common, ...ofJoint(protocol, study.id, reading) })), { ...common, ...ofDog(protocol, study.id, joints) }];
  });
}

function commonOf({ dog, picture, centres }: FhirOrder, study: StudyPicture, { status, accepted, by }: ReportVersion, number: number): Omit<Observation, 'code'> {
  const visit = picture.visits.find(({ films }) => films.some((film) => film.serves.includes(study.id)));
  const day = study.films[0]?.day;
  return {
    resourceType: 'Observation',
    meta: { versionId: String(number), lastUpdated: by.rec },
    basedOn: [reference('ServiceRequest', study.id)],
    status: status as Observation['status'],
    category: [concept('http://terminology.hl7.org/CodeSystem/observation-category', 'imaging', 'Imaging')],
    subject: reference('Patient', dog.id, dog.callName),
    ...(day && { effectiveDateTime: day }),
    issued: accepted?.at ?? by.at,
    performer: [named(centres[study.centre]?.name ?? 'the centre')],
    ...(visit && { derivedFrom: [reference('ImagingStudy', visit.id)] }),
  };
}

function ofJoint(protocol: Protocol, study: string, reading: JointReading): Pick<Observation, 'id' | 'text' | 'code' | 'bodySite' | 'method' | 'component' | 'dataAbsentReason' | 'valueQuantity' | 'valueCodeableConcept'> {
  const place = `${reading.joint} ${protocol.region}`;
  const components = componentsOf(protocol, reading);
  const why = reading.value === undefined && (protocol.noValue.find(({ code }) => code === reading.reason)?.words ?? 'no reason was given');
  return {
    id: jointId(study, reading.joint),
    text: narrative([`${place}: ${reading.value === undefined ? `no value, because ${String(why)}` : formatValue(protocol.value, reading.value)}.`, ...components.flatMap(({ code }) => code.text ?? [])]),
    code: codeOf(protocol),
    bodySite: { coding: [...REGIONS[protocol.region].coding!, SIDES[reading.joint]], text: place },
    method: { text: `${protocol.name}, version ${protocol.version}` },
    ...(reading.value === undefined ? { dataAbsentReason: absent(reading.reason ?? 'none', String(why), reading.reason === 'notImaged' ? 'not-performed' : 'unknown') } : valueOf(protocol, reading.value)),
    ...(components.length > 0 && { component: components }),
  };
}

/** The worse joint speaks for the dog; where one could not be read it is "at least", and never a grade or value of its own. */
function ofDog(protocol: Protocol, study: string, joints: JointReading[]): Pick<Observation, 'id' | 'text' | 'code' | 'hasMember' | 'dataAbsentReason' | 'valueQuantity' | 'valueCodeableConcept'> {
  const { kind, words, value } = dogsResult(protocol, joints);
  const told = value === undefined || kind === 'none' || kind === 'incomplete' ? { dataAbsentReason: absent(kind, words) } : kind === 'value' ? valueOf(protocol, value) : atLeast(protocol, value, words);
  return {
    id: dogId(study),
    text: narrative([`${words}.`]),
    code: ownConcept('dogs-result', protocol.code, `${protocol.name}: the dog’s result`),
    ...told,
    hasMember: joints.map(({ joint }) => reference('Observation', jointId(study, joint))),
  };
}

const codeOf = ({ code, value }: Protocol) => ownConcept('joint-value', code, value.name);

function valueOf({ code, value: rule }: Protocol, value: number | string): Pick<Observation, 'valueQuantity' | 'valueCodeableConcept'> {
  if (rule.kind === 'number') return { valueQuantity: written(Number(value), rule.unit, rule.decimals) };
  return { valueCodeableConcept: ownConcept(`grade:${code}`, String(value), formatValue(rule, value)) };
}

function atLeast({ code, value: rule }: Protocol, value: number | string, words: string): Pick<Observation, 'valueQuantity' | 'valueCodeableConcept'> {
  if (rule.kind === 'number') return { valueQuantity: { comparator: '>=', ...written(Number(value), rule.unit, rule.decimals) } };
  return { valueCodeableConcept: ownConcept(`grade-at-least:${code}`, String(value), words) };
}

/** JSON does not keep the nought of 0.40; how many decimals were read is said beside the number. */
const written = (value: number, unit: string, decimals: number): Quantity => ({ extension: [{ url: extensionUrl('decimals'), valueInteger: decimals }], ...quantity(value, unit) });

function componentsOf(protocol: Protocol, { value, findings = {} }: JointReading): ObservationComponent[] {
  const found = Object.entries(findings).flatMap(([code, answer]): ObservationComponent[] => {
    const finding = protocol.findings.find((f) => f.code === code);
    if (!finding) return [];
    const name = ownConcept('finding', code, finding.label);
    if (finding.kind === 'number') return [{ code: { ...name, text: findingWords(finding, answer) }, valueQuantity: written(Number(answer), finding.unit, finding.decimals) }];
    if (finding.kind === 'yesNo') return [{ code: { ...name, text: `${finding.label}: ${answer ? 'yes' : 'no'}` }, valueBoolean: Boolean(answer) }];
    const words = finding.choices.find((choice) => choice.code === answer)?.words ?? String(answer);
    return [{ code: { ...name, text: findingWords(finding, answer) }, valueCodeableConcept: ownConcept(`finding:${code}`, String(answer), words) }];
  });
  return [...found, ...intervalOf(protocol, value)];
}

/** How far a second look may lie from this one, where somebody has published it. */
function intervalOf({ value: rule, repeatability }: Protocol, value: number | string | undefined): ObservationComponent[] {
  if (rule.kind !== 'number' || !repeatability.known || typeof value !== 'number') return [];
  const wide = Z95 * standardError(repeatability.sd, repeatability.icc);
  const end = (x: number) => written(Number(x.toFixed(rule.decimals)), rule.unit, rule.decimals);
  const [low, high] = [end(Math.max(rule.min, value - wide)), end(value + wide)];
  const words = `In 95 of 100 repeats between ${low.value!.toFixed(rule.decimals)} and ${high.value!.toFixed(rule.decimals)} (from ${repeatability.n} dogs; ${repeatability.citation})`;
  return [
    { code: ownConcept('reading', 'interval', words), valueRange: { low, high } },
    { code: ownConcept('reading', 'intervalDogs', 'How many dogs or joints the interval rests on'), valueInteger: repeatability.n },
  ];
}
