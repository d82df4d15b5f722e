import { inAList } from '#libs/contracts/in-a-list';
import type { BookingOptions } from '#libs/contracts/booking';
import { stepName, studyName } from '#libs/register/spoken-names';
import { t } from '#libs/words/spoken';
import { spokenDay } from '../record/day-words.js';
import type { EarlierOrder } from './booking-source.js';

/** What this dog had, or is having, before anything is booked twice. */
export const earlierOrders = (orders: EarlierOrder[]): BookingOptions['repeats'] =>
  orders.map(({ id, accession, day, step, closed, studies }) => {
    const what = inAList(studies.map(studyName));
    const state = closed ? t('closed') : t('still open: {step}', { step: stepName(step) });
    return { accession, orderId: id, words: day ? t('{studies}, visit {day}; {state}.', { studies: what || t('No study'), day: spokenDay(day), state }) : t('{studies}, no visit; {state}.', { studies: what || t('No study'), state }) };
  });
