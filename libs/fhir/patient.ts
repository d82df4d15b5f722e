import type { Identifier, Patient } from '@medplum/fhirtypes';
import { concept, named, numberSystem, ownConcept, reference, SNOMED } from './codes.js';
import type { FhirDog } from './source.js';

const ANIMAL = 'http://hl7.org/fhir/StructureDefinition/patient-animal';
const GENDER_STATUS = 'http://hl7.org/fhir/animal-genderstatus';
const KINDS: Record<string, string> = { transponder: 'Transponder, ISO 11784', olderTransponder: 'Transponder of an older kind', tattoo: 'Tattoo' };

/** A dog. Its owner is a RelatedPerson, and never in here. */
export function patient(dog: FhirDog, base: string): Patient {
  const born = birthDate(dog.birth);
  return {
    resourceType: 'Patient',
    id: dog.id,
    extension: [{
      url: ANIMAL,
      extension: [
        { url: 'species', valueCodeableConcept: concept(SNOMED, '448771007', 'Canis lupus subspecies familiaris') },
        { url: 'breed', valueCodeableConcept: { text: dog.breed } },
        { url: 'genderStatus', valueCodeableConcept: dog.neutered ? concept(GENDER_STATUS, 'neutered', 'Neutered') : concept(GENDER_STATUS, 'intact', 'Intact') },
      ],
    }],
    identifier: identifiers(dog, base),
    active: true,
    name: names(dog),
    gender: dog.sex,
    ...(born && { birthDate: born }),
    ...(dog.died && { deceasedDateTime: dog.died }),
    ...(dog.practiceName && { managingOrganization: named(dog.practiceName) }),
  };
}

function names({ callName, names: [now, ...earlier] }: FhirDog): Patient['name'] {
  return [
    { use: 'usual', text: callName },
    ...(now ? [{ use: 'official' as const, text: now.name, period: { start: now.from } }] : []),
    ...earlier.map((name) => ({ use: 'old' as const, text: name.name, period: { start: name.from } })),
  ];
}

function identifiers(dog: FhirDog, base: string): Identifier[] {
  const animal = (value: string, use: 'official' | 'old'): Identifier => ({ use, type: { text: 'Animal number of this server' }, system: numberSystem(base, 'animal'), value });
  return [
    animal(dog.animalId, 'official'),
    ...dog.merged.map((gone) => animal(gone.animalId, 'old')),
    ...dog.identifiers.filter(({ kind, value }) => kind !== 'none' && value).map(({ kind, value, from, until }): Identifier => ({
      use: until ? 'old' : 'usual', type: ownConcept('identifier', kind, KINDS[kind] ?? kind), ...(kind === 'transponder' && { system: 'urn:iso:std:iso:11784' }), value, period: { start: from, ...(until && { end: until }) },
    })),
    ...dog.studBook.map(({ book, number }): Identifier => ({ use: 'secondary', type: { text: `Stud book ${book}` }, value: number, assigner: { display: book } })),
  ];
}

/** No more of the date than is known; none where not even the year is. */
function birthDate({ earliest, latest }: FhirDog['birth']): string | undefined {
  if (earliest === latest) return latest;
  if (earliest.slice(0, 7) === latest.slice(0, 7)) return latest.slice(0, 7);
  return earliest.slice(0, 4) === latest.slice(0, 4) ? latest.slice(0, 4) : undefined;
}

/** An entry that was merged into another of the same dog: what was asked for by its old id leads on. */
export const replacedPatient = (dog: FhirDog, kept: string, base: string): Patient => ({ ...patient(dog, base), active: false, link: [{ other: reference('Patient', kept), type: 'replaced-by' }] });
