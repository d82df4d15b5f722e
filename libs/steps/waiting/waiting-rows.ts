/** What a person has left to answer an offer; our own choice. */
export const OFFER_HOURS = 24;
/** Nobody is offered a time before the dog can be prepared for it; our own choice. */
export const PREPARE_DAYS = 2;

export interface OfferedSlot {
  day: string; start: string; minutes: number;
  room: string; operator: string; nurse: string; vet: string;
}

export interface WaitingRow { id: string; orderId: string; visitId: string; fromDay: string | null }
