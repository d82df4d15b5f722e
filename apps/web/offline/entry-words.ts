import { optionWords } from '../screens/order/forms/option-words.js';
import { t } from '../words/t.js';
import type { Waiting, Witnessed } from './witnessed.js';
import type { PageSentence } from '#libs/words/de/staff/page-words';
import { plain } from '../design/format.js';

const names: Record<Witnessed, PageSentence> = {
  recordReading: 'Reading taken', recordDrug: 'Drug', recordEvent: 'Event', stopImaging: 'Stop imaging', endImaging: 'End of imaging', signRecovery: 'Recovery signs', giveSheet: 'Going-home sheet explained', sendHome: 'Went home', scanDog: 'Scan',
};

const measures: Record<string, PageSentence> = { heartRate: 'heart {value}', breaths: 'breathing {value}', spo2: 'oxygen {value} %', temperature: '{value} °C', gums: 'gums {value}', note: '{value}' };

const written = (value: unknown) => (typeof value === 'number' ? plain(value) : t.known(String(value)));

/** What was written down, in the words of the form. */
export function entryWords({ action, input }: Pick<Waiting, 'action' | 'input'>): string {
  const said = {
    recordReading: () => Object.entries(measures).flatMap(([key, words]) => (input[key] === undefined ? [] : [t(words, { value: written(input[key]) })])).join(', '),
    recordDrug: () => [optionWords(String(input.event)), input.drug, t('{amount} mL', { amount: written(input.amountMl) }), t('batch {batch}', { batch: String(input.batch) })].map(String).join(', '),
    recordEvent: () => String(input.what),
    stopImaging: () => (input.woke ? t('the dog woke') : ''),
    endImaging: () => '',
    signRecovery: () => (input.signs as string[]).map(optionWords).join(', '),
    giveSheet: () => t('to {name}', { name: String(input.to) }),
    sendHome: () => t('with {name}', { name: String(input.with) }),
    scanDog: () => (input.numbers as string[]).join(', ') || t('nothing read'),
  }[action]();
  return said ? `${t(names[action])}: ${said}` : t(names[action]);
}
