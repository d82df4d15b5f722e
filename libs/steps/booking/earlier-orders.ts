import type { BookingOptions } from '#libs/contracts/booking';
import { stepLabels } from '#libs/pathway/words';
import { findProtocol } from '#libs/science/protocols/catalogue';
import { shortDay } from '../record/day-words.js';
import type { EarlierOrder } from './booking-source.js';

/** What this dog had, or is having, before anything is booked twice. */
export const earlierOrders = (orders: EarlierOrder[]): BookingOptions['repeats'] =>
  orders.map(({ id, accession, day, step, closed, studies }) => {
    const what = studies.map((s) => findProtocol(s.protocol, s.version)?.deskName ?? s.protocol).join(', ');
    const state = closed ? 'closed' : `still open: ${(stepLabels as Record<string, string>)[step] ?? step}`;
    return { accession, orderId: id, words: `${what || 'No study'}${day ? `, visit ${shortDay(day)}` : ', no visit'}; ${state}.` };
  });
