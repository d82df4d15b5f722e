import { readFileSync } from 'node:fs';
import path from 'node:path';
import { currentProtocols } from '#libs/science/protocols/catalogue';
import { inPlainEnglish, type Tellable } from '#libs/words/said-error';
import { readBundle, SYSTEMS } from './read-bundle.js';
import { isStated, type Read } from './stated.js';

type Json = Record<string, unknown>;
const example = (): { entry: { fullUrl?: string; resource: Json }[] } => JSON.parse(readFileSync(path.resolve(import.meta.dirname, '../../../docs/results-in/bundle.json'), 'utf8')) as never;
const study = (code: string) => currentProtocols().find((p) => p.code === code)!;
const joints = (read: Read, code: string) => (isStated(read) ? read.joints(study(code)) : { joints: [], problems: read.told });
const inEnglish = (all: Tellable[]) => all.map(inPlainEnglish).join(' ');
const told = (spoil: (entries: { fullUrl?: string; resource: Json }[]) => void): string => {
  const bundle = example();
  spoil(bundle.entry);
  const [first] = readBundle(bundle);
  return isStated(first!) ? inEnglish(joints(first, 'hipLaxity').problems) || 'can be read' : inEnglish(first!.told);
};

describe('a FHIR Bundle of reports', () => {
  it('of the documentation is read, a report with its observations each', () => {
    const all = readBundle(example());
    expect(all.map((r) => isStated(r) && r.reading)).toEqual([
      { package: 'P-1A2B3C4D', study: 'hipLaxity', number: 'R-2031', readBy: 'Noemi Haskel', readOn: '2026-11-30' },
      { package: 'P-2B3C4D5E', study: 'hipExtended', number: 'R-2032', readBy: 'Noemi Haskel', readOn: '2026-11-30', comment: 'The right hip lay turned.' },
    ]);
    expect(joints(all[0]!, 'hipLaxity')).toEqual({ joints: [{ joint: 'left', value: 0.38 }, { joint: 'right', value: 0.44 }], problems: [] });
    expect(joints(all[1]!, 'hipExtended')).toEqual({ joints: [{ joint: 'left', value: 'B1', findings: { criteria: '2022', norbergAngle: 105.5 } }, { joint: 'right', reason: 'position' }], problems: [] });
  });

  it('finds its observations also inside the report, and its reader in another resource', () => {
    expect(told((entries) => {
      const [report, left, right] = entries;
      report!.resource['contained'] = [{ ...left!.resource, id: 'a' }, { ...right!.resource, id: 'b' }];
      report!.resource['result'] = [{ reference: '#a' }, { reference: '#b' }];
      report!.resource['resultsInterpreter'] = [{ reference: 'Practitioner/7' }];
      entries.splice(1, 2, { resource: { resourceType: 'Practitioner', id: '7', name: [{ text: 'Tobin Arkwell' }] } });
    })).toBe('can be read');
  });

  it('takes the sides as SNOMED CT has them', () => {
    expect(told((entries) => {
      for (const [i, code] of [[1, '7771000'], [2, '24028007']] as const) entries[i]!.resource['bodySite'] = { coding: [{ system: 'http://snomed.info/sct', code: '24136001' }, { system: 'http://snomed.info/sct', code }] };
    })).toBe('can be read');
  });

  const left = (more: Json) => (entries: { resource: Json }[]) => void Object.assign(entries[1]!.resource, more);
  const report = (more: Json) => (entries: { resource: Json }[]) => void Object.assign(entries[0]!.resource, more);
  it.each([
    ['is not final', report({ status: 'preliminary' }), 'Its status is “preliminary”.'],
    ['is taken back', report({ status: 'entered-in-error' }), 'a veterinarian withdraws it'],
    ['has no number of its own', report({ identifier: [] }), 'Number: it is missing.'],
    ['names no package', report({ basedOn: [{ identifier: { system: 'urn:other', value: 'P-1' } }] }), 'Name the package'],
    ['names no reader', report({ resultsInterpreter: [] }), 'Read by: Say who read the films.'],
    ['names an observation that is not there', report({ result: [{ reference: 'Observation/none' }] }), 'is not in this Bundle'],
    ['names none', report({ result: [] }), 'There is one for each joint.'],
    ['holds what changes its meaning', report({ modifierExtension: [{ url: 'urn:not', valueBoolean: true }] }), 'modifierExtension'],
    ['follows rules that are not known', report({ implicitRules: 'urn:rules' }), 'implicitRules'],
    ['holds an observation that changes its meaning', left({ modifierExtension: [{ url: 'urn:not' }] }), 'modifierExtension'],
    ['holds an observation that is not final', left({ status: 'registered' }), 'not final'],
    ['says less than a value', left({ valueQuantity: { value: 0.3, comparator: '<' } }), '“<” beside a value is not taken'],
    ['says its value in words', left({ valueQuantity: undefined, valueString: 'tight' }), 'valueString is not read'],
    ['says two values', left({ valueCodeableConcept: { coding: [{ system: SYSTEMS.grade, code: 'A' }] } }), 'more than one value'],
    ['says a grade of somebody else’s', left({ valueQuantity: undefined, valueCodeableConcept: { coding: [{ system: 'urn:theirs', code: 'A' }] } }), `has no code of ${SYSTEMS.grade}`],
    ['says no joint', left({ bodySite: { text: 'left hip' } }), 'names no joint'],
  ])('that %s is refused in words', (_, spoil, says) => {
    expect(told(spoil)).toContain(says);
  });

  it.each([[null], [[]], ['text'], [{ resourceType: 'Bundle' }], [{ resourceType: 'DiagnosticReport' }], [{ resourceType: 'Bundle', entry: [{}] }], [{ resourceType: 'Bundle', entry: [] }]])('%j is none', (body) => {
    expect(readBundle(body)).toEqual([{ place: 0, told: [{ text: expect.stringMatching(/Bundle/) }], said: expect.any(Array) }]);
  });
});
