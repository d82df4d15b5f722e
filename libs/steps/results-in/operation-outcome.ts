import type { DeliveryAnswer } from '#libs/contracts/results-in';

/** FHIR R4's own way of saying what became of each report. */
export function operationOutcome({ readings }: DeliveryAnswer) {
  return {
    resourceType: 'OperationOutcome',
    issue: readings.map(({ place, number, outcome, words, asks }) => ({
      severity: outcome === 'notTaken' ? 'error' : 'information',
      code: outcome === 'notTaken' ? 'invalid' : outcome === 'alreadyThere' ? 'duplicate' : 'informational',
      diagnostics: [`Report ${place}${number && ` (${number})`}: ${words}`, ...asks].join(' '),
    })),
  };
}
