import type { RelatedPerson } from '@medplum/fhirtypes';
import { ownConcept, reference } from './codes.js';
import type { FhirPerson } from './source.js';

const WORDS: Record<string, string> = { owner: 'Owner', coOwner: 'Co-owner', breeder: 'Breeder', agent: 'Agent of the owner', payer: 'Payer', addressee: 'Addressee' };

/** Somebody around a dog, in one role. Who was erased is a role without a person. */
export function relatedPerson({ id, dog, role, name, email, phone, address, from, until, erased }: FhirPerson): RelatedPerson {
  return {
    resourceType: 'RelatedPerson',
    id,
    active: until === null,
    patient: reference('Patient', dog),
    relationship: [ownConcept('person-role', role, WORDS[role] ?? role)],
    period: { start: from, ...(until && { end: until }) },
    ...(!erased && {
      name: [{ text: name }],
      ...((email ?? phone) && { telecom: [...(phone ? [{ system: 'phone' as const, value: phone }] : []), ...(email ? [{ system: 'email' as const, value: email }] : [])] }),
      ...(address && { address: [{ text: address }] }),
    }),
  };
}
