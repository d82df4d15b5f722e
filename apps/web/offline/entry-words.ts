import { optionWords } from '../screens/order/forms/option-words.js';
import type { Waiting, Witnessed } from './witnessed.js';

const names: Record<Witnessed, string> = {
  recordReading: 'Reading', recordDrug: 'Drug', recordEvent: 'Event', stopImaging: 'Stop imaging', endImaging: 'End of imaging', signRecovery: 'Recovery signs', giveSheet: 'Going-home sheet explained', sendHome: 'Went home', scanDog: 'Scan',
};

const measures: [string, string, string][] = [['heartRate', 'heart', ''], ['breaths', 'breathing', ''], ['spo2', 'oxygen', ' %'], ['temperature', '', ' °C'], ['gums', 'gums', ''], ['note', '', '']];

/** What was written down, in the words of the form. */
export function entryWords({ action, input }: Pick<Waiting, 'action' | 'input'>): string {
  const said = {
    recordReading: () => measures.flatMap(([key, before, after]) => (input[key] === undefined ? [] : [`${before} ${String(input[key])}${after}`.trim()])).join(', '),
    recordDrug: () => [optionWords(String(input.event)), input.drug, `${String(input.amountMl)} mL`, `batch ${String(input.batch)}`].map(String).join(', '),
    recordEvent: () => String(input.what),
    stopImaging: () => (input.woke ? 'the dog woke' : ''),
    endImaging: () => '',
    signRecovery: () => (input.signs as string[]).map(optionWords).join(', '),
    giveSheet: () => `to ${String(input.to)}`,
    sendHome: () => `with ${String(input.with)}`,
    scanDog: () => (input.numbers as string[]).join(', ') || 'nothing read',
  }[action]();
  return said ? `${names[action]}: ${said}` : names[action];
}
