import type { ActionName } from '#libs/contracts/actions/all';

const OWNERS_WORD: ReadonlySet<string> = new Set<ActionName>(['consentSedation', 'consentStudy', 'consentSendAll', 'answerStatistics']);
const AT_THE_PRACTICE: readonly string[] = ['desk', 'nurse', 'vet'];

/** What the owner signs at the practice is written down by whoever has the owner in front of them, and stays the owner's word. */
export const writesOwnersWord = (action: string, roles: readonly string[]): boolean => OWNERS_WORD.has(action) && roles.some((role) => AT_THE_PRACTICE.includes(role));
