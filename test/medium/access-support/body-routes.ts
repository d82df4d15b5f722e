import { drugLine } from '#libs/contracts/actions/visit';
import { actionRequest } from '#libs/contracts/actions/all';
import { incidentClosed } from '#libs/contracts/actions/incident';
import { moveAsked } from '#libs/contracts/calendar';
import { bookingOptionsAsked, newBooking } from '#libs/contracts/booking';
import { billPreviewAsked, newCentreBill, saidOfBill, saidOfLine } from '#libs/contracts/centre-bills';
import { newAgreement, newCharges, newPayment, newReversal, newStatement } from '#libs/contracts/fees';
import { assignImage, newMachine, setAsideImage } from '#libs/contracts/gateway';
import { newKey, newWebhook } from '#libs/contracts/integrations';
import { answerOffer, joinWaiting } from '#libs/contracts/waiting';
import { groupOptionsAsked, newGroupBooking } from '#libs/contracts/group-booking';
import { detectorSize } from '#libs/contracts/film-size';
import { addIdentifier, addPersonRole, newAccreditation, newCentre, newDog, newEquipment, newPerson, newReader, newRoom, newStaff, newText, prices, renameDog } from '#libs/contracts/register';
import { newDataRequest, requestClosed, requestExtended, requestNoted, requestVerified } from '#libs/contracts/requests';
import { mergeDogs, newAuthority, newClosure, reachableDays, startClosing } from '#libs/contracts/people';
import { newChannel } from '#libs/contracts/dispatch';
import { ownerAnswers, ownerAppeal, ownerConsents, ownerEstimate, ownerLanguage, ownerLetterTime, ownerWithdraw } from '#libs/contracts/screens/owner';
import { birthsSaid } from '#libs/contracts/screens/breeds';
import { choosingAsked } from '#libs/contracts/choosing';
import { roundAsked } from '#libs/contracts/readers';
import { newKey as newCentreKey, resultsFile, resultsFileTaken, setAsideReading } from '#libs/contracts/results-in';
import { readerReject, readerResult } from '#libs/contracts/screens/reader';
import { chooseLanguage, firstRun, join, newPractice, openLink, signIn } from '#libs/contracts/session';
import { equipmentChecked } from '#libs/register/practice/mark-equipment-checked';
import { z } from 'zod';
import type { Route } from './routes.js';

export type Sender = 'staff' | 'owner' | 'reader' | 'lead';

/** What each route takes, and from whom; a word where it takes nothing that could be wrong. */
export const bodies: Record<Extract<Route, `POST ${string}`>, { takes: z.ZodType; from: Sender } | string> = {
  'POST /api/sign-in': { takes: signIn, from: 'staff' },
  'POST /api/sign-out': 'no body',
  'POST /api/me/language': { takes: chooseLanguage, from: 'staff' },
  'POST /api/links/open': { takes: openLink, from: 'staff' },
  'POST /api/join': { takes: join, from: 'staff' },
  'POST /api/first-run': { takes: firstRun, from: 'staff' },
  'POST /api/sedation/arithmetic': { takes: z.object({ weightKg: z.number().positive().max(150), drugs: z.array(drugLine).min(1).max(8) }), from: 'staff' },
  'POST /api/calendar/look': { takes: moveAsked, from: 'staff' },
  'POST /api/booking/options': { takes: bookingOptionsAsked, from: 'staff' },
  'POST /api/bookings': { takes: newBooking, from: 'staff' },
  'POST /api/groups/options': { takes: groupOptionsAsked, from: 'staff' },
  'POST /api/orders/:order/waiting': { takes: joinWaiting, from: 'staff' },
  'POST /api/waiting-list/:entry/leave': 'no body',
  'POST /api/owner/offer': { takes: answerOffer, from: 'owner' },
  'POST /api/groups': { takes: newGroupBooking, from: 'staff' },
  'POST /api/orders/:order/actions/:action': { takes: actionRequest, from: 'staff' },
  'POST /api/orders/:order/fees/charges': { takes: newCharges, from: 'staff' },
  'POST /api/orders/:order/fees/payments': { takes: newPayment, from: 'staff' },
  'POST /api/orders/:order/fees/agreements': { takes: newAgreement, from: 'staff' },
  'POST /api/orders/:order/fees/reversals': { takes: newReversal, from: 'staff' },
  'POST /api/orders/:order/fees/statements': { takes: newStatement, from: 'staff' },
  'POST /api/centre-bills': { takes: newCentreBill, from: 'staff' },
  'POST /api/centre-bills/preview': { takes: billPreviewAsked, from: 'staff' },
  'POST /api/centre-bills/:bill/said': { takes: saidOfBill, from: 'staff' },
  'POST /api/centre-bills/:bill/lines/:line/said': { takes: saidOfLine, from: 'staff' },
  'POST /api/orders/:order/images': 'a file: tried by itself',
  'POST /api/orders/:order/owner-link': 'no body',
  'POST /api/orders/:order/problems/:problem/retry': 'no body',
  'POST /api/orders/:order/messages/:message/resolve': { takes: z.object({ arrived: z.boolean() }), from: 'staff' },
  'POST /api/dogs': { takes: newDog, from: 'staff' },
  'POST /api/dogs/:dog/names': { takes: renameDog, from: 'staff' },
  'POST /api/dogs/:dog/identifiers': { takes: addIdentifier, from: 'staff' },
  'POST /api/dogs/:dog/people': { takes: addPersonRole, from: 'staff' },
  'POST /api/people': { takes: newPerson, from: 'staff' },
  'POST /api/people/:person': { takes: newPerson, from: 'staff' },
  'POST /api/dogs/:dog/merge': { takes: mergeDogs, from: 'staff' },
  'POST /api/dogs/:dog/authorities': { takes: newAuthority, from: 'staff' },
  'POST /api/dogs/:dog/authorities/:authority/end': 'no body',
  'POST /api/practice/closing': { takes: startClosing, from: 'staff' },
  'POST /api/practice/reachable': { takes: reachableDays, from: 'staff' },
  'POST /api/practice/centres/:centre/channel': { takes: newChannel, from: 'staff' },
  'POST /api/practice/centres/:centre/closures': { takes: newClosure, from: 'staff' },
  'POST /api/practice/staff': { takes: newStaff, from: 'staff' },
  'POST /api/practice/rooms': { takes: newRoom, from: 'staff' },
  'POST /api/practice/equipment': { takes: newEquipment, from: 'staff' },
  'POST /api/practice/equipment/:device/checked': { takes: equipmentChecked, from: 'staff' },
  'POST /api/practice/equipment/:device/pixels': { takes: detectorSize, from: 'staff' },
  'POST /api/practice/accreditations': { takes: newAccreditation, from: 'staff' },
  'POST /api/practice/texts': { takes: newText, from: 'staff' },
  'POST /api/practice/prices': { takes: prices, from: 'staff' },
  'POST /api/practice/centres': { takes: newCentre, from: 'staff' },
  'POST /api/practice/machines': { takes: newMachine, from: 'staff' },
  'POST /api/practice/machines/:machine/end': 'no body',
  'POST /api/practice/keys': { takes: newKey, from: 'staff' },
  'POST /api/practice/keys/:key/end': 'no body',
  'POST /api/practice/webhooks': { takes: newWebhook, from: 'staff' },
  'POST /api/practice/webhooks/:webhook/end': 'no body',
  'POST /api/practice/webhooks/:webhook/secret': 'no body',
  'POST /api/practice/webhooks/:webhook/test': 'no body',
  'POST /api/practice/centres/:centre/channel/try': 'no body',
  'POST /api/practice/webhooks/deliveries/:delivery/again': 'no body',
  'POST /api/unmatched/:image/assign': { takes: assignImage, from: 'staff' },
  'POST /api/unmatched/performed/:step/set-aside': { takes: setAsideImage, from: 'staff' },
  'POST /api/unmatched/:image/set-aside': { takes: setAsideImage, from: 'staff' },
  'POST /api/orders/:order/arrived/:sha/leave-out': { takes: setAsideImage, from: 'staff' },
  'POST /api/practice/centres/:centre/readers': { takes: newReader, from: 'staff' },
  'POST /api/results-in/preview': { takes: resultsFile, from: 'staff' },
  'POST /api/results-in/take': { takes: resultsFileTaken, from: 'staff' },
  'POST /api/results-in/left/:reading/set-aside': { takes: setAsideReading, from: 'staff' },
  'POST /api/results-in/keys': { takes: newCentreKey, from: 'lead' },
  'POST /api/results-in/keys/:key/end': 'no body',
  'POST /api/results-in/messages': 'signed: tried by itself',
  'POST /api/results-in/fhir': 'signed: tried by itself',
  'POST /api/requests': { takes: newDataRequest, from: 'staff' },
  'POST /api/requests/:request/verified': { takes: requestVerified, from: 'staff' },
  'POST /api/requests/:request/extended': { takes: requestExtended, from: 'staff' },
  'POST /api/requests/:request/noted': { takes: requestNoted, from: 'staff' },
  'POST /api/requests/:request/restricted': 'no body',
  'POST /api/requests/:request/restriction-lifted': { takes: requestNoted, from: 'staff' },
  'POST /api/requests/:request/objected': 'no body',
  'POST /api/requests/:request/erased': 'no body',
  'POST /api/requests/:request/closed': { takes: requestClosed, from: 'staff' },
  'POST /api/reader/packages/:package/acknowledge': 'no body',
  'POST /api/reader/packages/:package/reject': { takes: readerReject, from: 'reader' },
  'POST /api/reader/packages/:package/result': { takes: readerResult, from: 'reader' },
  'POST /api/scheme/choosing': { takes: choosingAsked, from: 'lead' },
  'POST /api/scheme/reading-round': { takes: roundAsked, from: 'lead' },
  'POST /api/scheme/practices': { takes: newPractice, from: 'lead' },
  'POST /api/scheme/breeds/:set/births': { takes: birthsSaid, from: 'lead' },
  'POST /api/scheme/breeds/freeze': 'no body',
  'POST /api/owner/answers': { takes: ownerAnswers, from: 'owner' },
  'POST /api/owner/estimate': { takes: ownerEstimate, from: 'owner' },
  'POST /api/owner/consents': { takes: ownerConsents, from: 'owner' },
  'POST /api/owner/transfer': 'no body',
  'POST /api/owner/language': { takes: ownerLanguage, from: 'owner' },
  'POST /api/owner/letter-time': { takes: ownerLetterTime, from: 'owner' },
  'POST /api/owner/appeal': { takes: ownerAppeal, from: 'owner' },
  'POST /api/orders/:order/incidents/:incident/close': { takes: incidentClosed, from: 'staff' },
  'POST /api/owner/withdraw': { takes: ownerWithdraw, from: 'owner' },
};
