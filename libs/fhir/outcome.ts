import type { OperationOutcome, OperationOutcomeIssue } from '@medplum/fhirtypes';

export type IssueCode = NonNullable<OperationOutcomeIssue['code']>;

export const outcome = (code: IssueCode, words: string, severity: 'error' | 'warning' = 'error'): OperationOutcome => ({ resourceType: 'OperationOutcome', issue: [{ severity, code, diagnostics: words, details: { text: words } }] });
