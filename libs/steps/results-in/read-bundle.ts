import { said } from '#libs/words/said';
import { SaidError, type Tellable } from '#libs/words/said-error';
import { z } from 'zod';
import type { Joint } from '#libs/contracts/common';
import { MOST_READINGS } from '#libs/contracts/results-in';
import type { Protocol } from '#libs/science/protocols/types';
import { gradesAsText } from './read-message.js';
import { asCame, readStated, type AsCame, type Read } from './stated.js';

/** Names of our own code lists, as those that this server's own FHIR pages use. */
export const SYSTEMS = {
  package: 'urn:cotyla:fhir:package', order: 'urn:cotyla:fhir:order', film: 'urn:cotyla:fhir:film', study: 'urn:cotyla:fhir:study', joint: 'urn:cotyla:fhir:joint', grade: 'urn:cotyla:fhir:grade', noValue: 'urn:cotyla:fhir:no-value', finding: 'urn:cotyla:fhir:finding',
} as const;
/** SNOMED CT: Left, Right. */
const SIDES: Record<string, string> = { '7771000': 'left', '24028007': 'right' };
const SNOMED = 'http://snomed.info/sct';

// FHIR R4 (4.0.1), only what is read of it; the rest may stand there and is left alone, but for what changes the meaning.
const text = z.string().max(2000);
const identifier = z.object({ system: text.optional(), value: text.optional() });
const concept = z.object({ coding: z.array(z.object({ system: text.optional(), code: text.optional() })).max(20).optional(), text: text.optional() });
const reference = z.object({ reference: text.optional(), identifier: identifier.optional(), display: text.optional() });
const quantity = z.object({ value: z.number().optional(), comparator: text.optional(), unit: text.optional() });
const values = { valueQuantity: quantity.optional(), valueCodeableConcept: concept.optional(), valueBoolean: z.boolean().optional(), dataAbsentReason: concept.optional() };
/** Another kind of value must not be passed over. */
const OTHER_VALUES = ['valueString', 'valueInteger', 'valueRange', 'valueRatio', 'valueSampledData', 'valueTime', 'valueDateTime', 'valuePeriod'];
const observation = z.looseObject({ status: text, bodySite: concept.optional(), ...values, component: z.array(z.looseObject({ code: concept, ...values })).max(40).optional() });
const report = z.looseObject({
  status: text, identifier: z.array(identifier).max(20).optional(), basedOn: z.array(reference).max(20).optional(), imagingStudy: z.array(reference).max(20).optional(), code: concept, subject: reference.optional(),
  issued: text.optional(), resultsInterpreter: z.array(reference).max(20).optional(), result: z.array(reference).max(20).optional(), conclusion: text.optional(), contained: z.array(z.looseObject({ resourceType: text, id: text.optional() })).max(40).optional(),
});
const bundle = z.object({ resourceType: z.literal('Bundle'), entry: z.array(z.object({ fullUrl: text.optional(), resource: z.looseObject({ resourceType: text, id: text.optional() }) })).max(2000) });

type Resource = Record<string, unknown> & { resourceType: string };
type Report = z.output<typeof report>;
type Observation = z.output<typeof observation>;
class CannotBeRead extends SaidError {}
const cannot = (sentence: Tellable): never => { throw new CannotBeRead(sentence); };
/** Names the joint, or the finding, that it is about. */
const cannotAt = (where: string, why: Tellable): never => cannot(said('{field}: {why}', { field: where, why }));

const FINAL = ['final', 'amended', 'corrected', 'appended'];

/** Every DiagnosticReport of a Bundle, with the Observations that it names; see docs/results-in.md. */
export function readBundle(body: unknown): Read[] {
  const whole = (told: Tellable): Read[] => [{ place: 0, told: [told], said: asCame('Bundle', body) }];
  const parsed = bundle.safeParse(body);
  if (!parsed.success) return whole(said('This is no FHIR R4 Bundle with entries that each hold a resource.'));
  const resources = new Map<string, Resource>();
  for (const { fullUrl, resource } of parsed.data.entry) {
    for (const name of [fullUrl, resource.id && `${resource.resourceType}/${resource.id}`]) if (name) resources.set(name, resource);
  }
  const reports = parsed.data.entry.map((e) => e.resource).filter((r) => r.resourceType === 'DiagnosticReport');
  if (reports.length === 0) return whole(said('There is no DiagnosticReport in this Bundle.'));
  if (reports.length > MOST_READINGS) return whole(said('There are {reports} DiagnosticReports. Send at most {most} at a time.', { reports: reports.length, most: MOST_READINGS }));
  return reports.map((r, i) => readReport(r, i + 1, resources));
}

function readReport(resource: Resource, place: number, resources: Map<string, Resource>): Read {
  const came: AsCame[] = ['identifier', 'basedOn', 'imagingStudy', 'code', 'subject', 'issued', 'resultsInterpreter', 'status', 'conclusion'].flatMap((field) => asCame(field, resource[field]));
  try {
    refuseModified(resource);
    const parsed = report.safeParse(resource);
    if (!parsed.success) return { place, said: came, told: [said('The DiagnosticReport is not as FHIR R4 has it, or lacks something: {paths}.', { paths: parsed.error.issues.map((i) => i.path.join('.')).join(', ') })] };
    const own = new Map((parsed.data.contained ?? []).map((c) => [`#${c.id ?? ''}`, c as Resource]));
    const find = (name: string): Resource | undefined => own.get(name) ?? resources.get(name);
    const common = readStated(statedOf(parsed.data, find));
    if ('told' in common) return { place, said: came, told: common.told };
    const observations = (parsed.data.result ?? []).map((r) => observationOf(r.reference ?? '', find));
    if (observations.length === 0) return { place, said: came, told: [said('The DiagnosticReport names no Observation in “result”. There is one for each joint.')] };
    came.push(...observations.flatMap((o) => asCame(jointOf(o) ?? 'Observation', o.valueQuantity ?? o.valueCodeableConcept ?? o.dataAbsentReason)));
    return { place, said: came, reading: common.reading, joints: (protocol) => jointsOf(protocol, observations) };
  } catch (error) {
    if (error instanceof CannotBeRead) return { place, said: came, told: [error.said] };
    throw error;
  }
}

function statedOf(r: Report, find: (name: string) => Resource | undefined): Record<string, unknown> {
  if (!FINAL.includes(r.status)) cannot(said('Its status is “{status}”. Only {final} readings are taken; a reading that is taken back is told to the practice, where a veterinarian withdraws it.', { status: r.status, final: FINAL.join(', ') }));
  const named = [...(r.basedOn ?? []), ...(r.imagingStudy ?? [])].flatMap((ref) => ref.identifier ?? []);
  const under = (system: string): string | undefined => named.find((i) => i.system === system)?.value;
  const [reader] = r.resultsInterpreter ?? [];
  const issued = r.issued?.slice(0, 10);
  const set = { package: under(SYSTEMS.package), order: under(SYSTEMS.order), film: under(SYSTEMS.film), study: codeOf(r.code, SYSTEMS.study), number: r.identifier?.find((i) => i.value)?.value, readBy: reader?.display ?? nameIn(find(reader?.reference ?? '')), readOn: issued, dogNumber: r.subject?.identifier?.value, comment: r.conclusion };
  return Object.fromEntries(Object.entries(set).filter(([, value]) => value !== undefined));
}

const practitioner = z.object({ name: z.array(z.object({ text: text.optional() })).min(1) });
const nameIn = (resource: Resource | undefined): string | undefined => practitioner.safeParse(resource).data?.name[0]?.text;

function observationOf(name: string, find: (name: string) => Resource | undefined): Observation {
  const resource = find(name);
  if (resource?.resourceType !== 'Observation') return cannot(said('The Observation “{name}” is not in this Bundle.', { name: name.slice(0, 80) }));
  refuseModified(resource);
  const parsed = observation.safeParse(resource);
  if (!parsed.success) return cannot(said('The Observation “{name}” is not as FHIR R4 has it: {paths}.', { name: name.slice(0, 80), paths: parsed.error.issues.map((i) => i.path.join('.')).join(', ') }));
  if (!FINAL.includes(parsed.data.status)) return cannot(said('The Observation “{name}” is “{status}” and not final.', { name: name.slice(0, 80), status: parsed.data.status }));
  return parsed.data;
}

/** FHIR R4, 2.6.1.5: who does not know a modifier extension must not go on as if it were not there. */
function refuseModified(resource: Resource): void {
  if (Array.isArray(resource['modifierExtension']) && resource['modifierExtension'].length > 0) cannot(said('It holds a modifierExtension, which changes what it means and is not known here. Send it without.'));
  if (resource['implicitRules'] !== undefined) cannot(said('It names implicitRules, which are not known here. Send it without.'));
}

function jointsOf(protocol: Protocol, observations: Observation[]): { joints: Joint[]; problems: Tellable[] } {
  try {
    const joints = observations.map((o): Joint => {
      const joint = jointOf(o) ?? cannot(said('An Observation names no joint. Its bodySite holds a code of {system}, left or right, or SNOMED CT’s for left or right.', { system: SYSTEMS.joint }));
      const value = valueOf(o, SYSTEMS.grade, joint);
      if (typeof value === 'boolean') cannotAt(joint, said('yes or no is no value of a joint.'));
      const reason = o.dataAbsentReason && (codeOf(o.dataAbsentReason, SYSTEMS.noValue) ?? cannotAt(joint, said('the dataAbsentReason holds no code of {system}.', { system: SYSTEMS.noValue })));
      const findings = Object.fromEntries((o.component ?? []).flatMap((c) => {
        refuseModified(c as unknown as Resource);
        const code = codeOf(c.code, SYSTEMS.finding) ?? cannotAt(joint, said('a component has no code of {system}.', { system: SYSTEMS.finding }));
        const found = valueOf(c, SYSTEMS.finding, `${joint}, ${code}`);
        return found === undefined ? [] : [[code, found] as const];
      }));
      return { joint, ...(value !== undefined && { value: value as number | string }), ...(reason && { reason }), ...(Object.keys(findings).length > 0 && { findings }) };
    });
    return { joints: gradesAsText(protocol, joints), problems: [] };
  } catch (error) {
    if (error instanceof CannotBeRead) return { joints: [], problems: [error.said] };
    throw error;
  }
}

type Valued = Pick<Observation, 'valueQuantity' | 'valueCodeableConcept' | 'valueBoolean'> & Record<string, unknown>;

/** One value of a kind that is known; “about”, “less than” and free text are no values here. */
function valueOf(from: Valued, system: string, where: string): number | string | boolean | undefined {
  const other = OTHER_VALUES.find((kind) => from[kind] !== undefined);
  if (other) return cannotAt(where, said('{kind} is not read. Use valueQuantity, valueCodeableConcept or valueBoolean.', { kind: other }));
  const { valueQuantity: q, valueCodeableConcept: c, valueBoolean: b } = from;
  if ([q, c, b].filter((v) => v !== undefined).length > 1) return cannotAt(where, said('there is more than one value.'));
  if (q?.comparator) return cannotAt(where, said('“{comparator}” beside a value is not taken. Give the value that was read, or the reason why there is none.', { comparator: q.comparator }));
  if (q && q.value === undefined) return cannotAt(where, said('the valueQuantity has no value.'));
  if (c) return codeOf(c, system) ?? cannotAt(where, said('the valueCodeableConcept has no code of {system}.', { system }));
  return q?.value ?? b;
}

const jointOf = ({ bodySite }: Observation): string | undefined => codeOf(bodySite, SYSTEMS.joint) ?? bodySite?.coding?.filter((c) => c.system === SNOMED).map((c) => SIDES[c.code ?? '']).find(Boolean);

/** Of a list, or of one that is named after it, such as the grades of one study. */
const codeOf = (named: z.output<typeof concept> | undefined, system: string): string | undefined => named?.coding?.find((c) => c.system === system || c.system?.startsWith(`${system}:`))?.code;
