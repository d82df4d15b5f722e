import type { z } from 'zod';
import type { newIdentifier } from '#libs/contracts/register';
import { normaliseScan } from '#libs/science/identifiers/normalise-scan';
import { parseTransponder } from '#libs/science/identifiers/transponder';
import { t } from '#libs/words/spoken';
import { asField } from '../parse-input.js';
import { badInput } from '../refusal.js';

export type IdentifierEntry = z.output<typeof newIdentifier>;
export interface CheckedIdentifier { kind: IdentifierEntry['kind']; value: string; how: IdentifierEntry['how'] }

/**
 * The number as it is kept. A transponder carries no check digit: typed, it must have been typed twice alike.
 * @param path where the entry stands in the form
 */
export function checkedIdentifier(entry: IdentifierEntry, path: string): CheckedIdentifier {
  const at = (field: string) => (path ? `${path}.${field}` : field);
  const { kind, how } = entry;
  if (kind === 'none') return { kind, value: '', how };
  const typed = normaliseScan(entry.value);
  if (typed === '') throw badInput(at('value'), t('Scan the dog, or type the number twice.'));
  const value = kind === 'transponder' ? asField(at('value'), () => parseTransponder(typed)).digits : typed;
  if (how === 'typedTwice') sameAgain(value, normaliseScan(entry.again ?? ''), at('again'), kind === 'tattoo' ? t('Sign') : t('Digit'));
  return { kind, value, how };
}

function sameAgain(first: string, again: string, path: string, sign: string): void {
  if (first === again) return;
  if (again === '') throw badInput(path, t('Type the number a second time, or scan the dog.'));
  const place = [...first].findIndex((c, i) => c !== again[i]);
  const where = place === -1 || place >= again.length ? t('The second number has {again} signs and the first {first}.', { again: again.length, first: first.length }) : t('{sign} {place} differs: {first} and then {again}.', { sign, place: place + 1, first: first[place]!, again: again[place]! });
  throw badInput(path, t('{where} Look at the reader’s display and type both again.', { where }));
}
