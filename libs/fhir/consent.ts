import type { Consent, Reference } from '@medplum/fhirtypes';
import type { Bag } from '#libs/pathway/bag';
import { lastWord } from '#libs/pathway/consent';
import type { FactOf, Purpose } from '#libs/pathway/facts';
import { concept, LOINC, ownConcept, reference } from './codes.js';
import type { FhirOrder } from './source.js';

const SCOPE = 'http://terminology.hl7.org/CodeSystem/consentscope';
const PURPOSES: Record<Purpose, { words: string; scope: [code: string, display: string] }> = {
  sedation: { words: 'Sedation', scope: ['treatment', 'Treatment'] },
  study: { words: 'The study', scope: ['treatment', 'Treatment'] },
  sendAll: { words: 'Sending every film taken', scope: ['patient-privacy', 'Privacy Consent'] },
  statistics: { words: 'Use in the breed’s statistics', scope: ['research', 'Research'] },
};

/** What was last said for each purpose: a yes or no of its own for a visit, a study or the whole order. */
export function consents(order: FhirOrder): Consent[] {
  const { picture } = order;
  const all = picture.order.facts;
  return [
    ...picture.visits.map((visit) => consent(order, 'sedation', visit.id, reference('Appointment', visit.id), visit.facts)),
    ...picture.studies.map((study) => consent(order, 'study', study.id, reference('ServiceRequest', study.id), study.facts)),
    ...picture.studies.map((study) => consent(order, 'sendAll', study.id, reference('ServiceRequest', study.id), study.facts)),
    consent(order, 'sendAll', order.id, undefined, all),
    consent(order, 'statistics', order.id, undefined, all),
  ].flatMap((one) => one ?? []);
}

function consent(order: FhirOrder, purpose: Purpose, on: string, about: Reference<never> | undefined, facts: Bag): Consent | undefined {
  const word = lastWord(purpose, facts);
  if (!word) return undefined;
  const given = word.type === 'consentGiven' ? word : facts.latest('consentGiven', (fact) => fact.purpose === purpose);
  const { words, scope } = PURPOSES[purpose];
  const yes = word.type === 'consentGiven' && word.answer === 'yes';
  const signers = signersOf(order, purpose, facts);
  return {
    resourceType: 'Consent',
    id: `${on}-${purpose}`,
    meta: { lastUpdated: order.changed },
    status: word.type === 'consentWithdrawn' ? 'inactive' : yes ? 'active' : 'rejected',
    scope: concept(SCOPE, ...scope),
    category: [concept(LOINC, '59284-0', 'Consent Document'), ownConcept('consent-purpose', purpose, words)],
    patient: reference('Patient', order.dog.id, order.dog.callName),
    dateTime: word.at,
    ...(signers.length > 0 && { performer: signers }),
    policyRule: { text: given ? `Text ${given.textVersion} of the practice` : 'No text was signed' },
    provision: { type: yes ? 'permit' : 'deny', ...(about && { data: [{ meaning: 'instance', reference: about }] }) },
  };
}

/** Whose word it is, for whoever may know the dog's people. */
function signersOf({ people }: FhirOrder, purpose: Purpose, facts: Bag): Reference<never>[] {
  const signers = facts.all('consentGiven').filter((fact: FactOf<'consentGiven'>) => fact.purpose === purpose).map((fact) => fact.signer);
  const roles = [...new Set(signers)].flatMap((signer) => people.find((p) => p.person === signer && p.role !== 'payer' && p.role !== 'addressee') ?? people.find((p) => p.person === signer) ?? []);
  return roles.map((role) => reference('RelatedPerson', role.id, role.name));
}
