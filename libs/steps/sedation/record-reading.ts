import { t } from '#libs/words/spoken';
import { badInput } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';

/** Counted per device, so that a tablet that comes back sends each reading once. */
export const recordReading = useCase('recordReading', (work, on, { device, n, ...values }) => {
  if (Object.values(values).every((v) => v === undefined || v === '')) throw badInput('heartRate', t('Enter at least one reading.'));
  const count = n ?? work.facts('readingTaken').filter((f) => f.visit === on && f.device === device).length;
  return [{ type: 'readingTaken', visit: on, device, n: count, detail: values }];
});
