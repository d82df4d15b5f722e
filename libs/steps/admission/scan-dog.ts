import { normaliseScan } from '#libs/science/identifiers/normalise-scan';
import { parseTransponder } from '#libs/science/identifiers/transponder';
import { ScienceError } from '#libs/science/error';
import { t } from '#libs/words/spoken';
import { badInput } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';
import { tellOtherOrder } from './tell-other-order.js';

/**
 * What the reader showed, also when it is another dog's number or nothing: three passes and two readers are logged.
 * When the number is that of another dog of this practice that is booked, that dog's order is told too.
 */
export const scanDog = useCase('scanDog', async (work, on, input) => {
  const numbers = input.numbers.map(normaliseScan).filter(Boolean);
  for (const number of numbers) checkNumber(number);
  await tellOtherOrder(work, numbers);
  return [{ type: 'identityScanned', visit: on, place: input.place, numbers, ...(input.passes ? { passes: input.passes } : {}), ...(input.readers ? { readers: input.readers } : {}) }];
});

/** Older kinds and tattoos are not checked; fifteen digits are. */
function checkNumber(number: string): void {
  if (!/^\d+$/.test(number) || number.length < 15) return;
  try {
    parseTransponder(number);
  } catch (error) {
    if (error instanceof ScienceError) throw badInput('numbers', t.said(error.said));
    throw error;
  }
}
