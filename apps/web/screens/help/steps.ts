import type { PageSentence } from '#libs/words/de/staff/page-words';
/** What each step of the road is for, who takes it, and what holds it. Cautions defer to the vet in charge and to local law. */
export interface HelpStep { id: string; title: PageSentence; who: PageSentence; does: PageSentence[]; holds: PageSentence; goesWrong: PageSentence; caution?: PageSentence }

const CAUTION_SLEEP = 'Sedation and anaesthesia can harm or kill. What is given, how much, and whether at all is decided by the veterinarian in charge, by local law and the code of practice. This program does arithmetic for what the vet has entered; it proposes nothing.';
const CAUTION_RAYS = 'X-rays harm. Nobody stands in the beam, hands stay out of it, and who was in the room is written down. Local law on radiation, and the person responsible for it at your practice, come first.';

export const helpSteps: HelpStep[] = [
  {
    id: 'booking', title: 'Booking', who: 'Front desk',
    does: ['Type the dog’s name or transponder, choose the studies and a time; each time has a room, a person who may take the views, a nurse and a vet.', 'Ask the health questions as they stand; “don’t know” is an answer, and a vet judges it.', 'Read the estimate out. The owner may also answer, agree and sign on their own page.'],
    holds: 'Too young on that day, a study repeated too soon, nobody accredited, a device whose check has run out: the form says which, and from which day it is possible.',
    goesWrong: 'Another time keeps answers, advice and signatures. A cancelled time is offered to the waiting list in order. A dog that does not come is written down as such, without blame.',
  },
  {
    id: 'consent', title: 'Consent', who: 'Owner, or somebody with a signed authority',
    does: ['Four questions of their own: the study, sending all films, the sedation, the use in statistics. Each may be answered with no.', 'Signed by link, on the tablet or on paper that is scanned.'],
    holds: 'Nothing is done without the yes that it needs. A yes may be taken back until it has been acted on.',
    goesWrong: 'The dog was sold: the new owner is asked anew. Somebody without authority is refused.',
  },
  {
    id: 'admission', title: 'Arriving', who: 'Nurse and vet',
    does: ['Weigh the dog, scan the transponder, ask the questions again.', 'The vet examines and signs a plan for today’s weight.'],
    holds: 'Another transponder than the order’s, a weight that jumped, a plan signed by a vet who is not here, a class that the vet has to judge.',
    goesWrong: 'A dog that is not well is turned away, and the visit is free for another.', caution: CAUTION_SLEEP,
  },
  {
    id: 'asleep', title: 'Asleep', who: 'Nurse and vet',
    does: ['Write down a reading every five minutes until the recovery signs are signed. The page “Beside the dog” is made for a tablet and works without network.', 'More sedation is a new plan that a vet signs.'],
    holds: 'A reading that is due is said, without a sound and without a countdown.',
    goesWrong: 'Anybody may press Stop imaging, at any time, without a reason. Missing views are sorted out later.', caution: CAUTION_SLEEP,
  },
  {
    id: 'imaging', title: 'Taking the films', who: 'Radiographer or vet',
    does: ['Scan the dog at the table, take each view, look at it before the dog wakes: accept it, or take it again with a reason.', 'Points set on a film show whether the pelvis is turned and how sure a room estimate is. The estimate stays in the room; the reader decides.'],
    holds: 'A film that names another dog or another day, a film that belongs to no study, nobody written down as in the room.',
    goesWrong: 'Every film goes to the reader, also one that was taken again. A film of another dog is taken out, with the reason kept.', caution: CAUTION_RAYS,
  },
  {
    id: 'recovery', title: 'Waking and going home', who: 'Nurse and vet',
    does: ['Sign the recovery signs that are seen now.', 'Print the going-home sheet and explain it to whoever collects the dog.'],
    holds: 'Nobody goes home before the signs are signed and the sheet is given.',
    goesWrong: 'Death or harm is one action: mails stop, the record is frozen, and one named person speaks with the family.',
  },
  {
    id: 'sending', title: 'Sending', who: 'Front desk',
    does: ['Seal the package: what is in it is fixed from then on. Send it.', 'The program asks after receipt and after the result, on the centre’s working days, and says when a person has to ask.'],
    holds: 'The owner’s yes to sending is missing, a view is missing without a reason.',
    goesWrong: 'The centre is closed, unpaid or its address bounces: the cause is named, and who can lift it. Films that come back are rebooked or settled by the vet.',
  },
  {
    id: 'reading', title: 'The reading', who: 'Reader at a grading centre',
    does: ['Read blind: no owner, no practice, no estimate from the room, no earlier reading.', 'Give each joint a value, or a reason why there is none; sign.'],
    holds: 'A value outside the scale is refused; an unusual one is asked about.',
    goesWrong: 'Films that cannot be read are sent back with the view and the reason. An appeal is read by somebody else, and the rule which one stands is fixed before.',
  },
  {
    id: 'letter', title: 'The letter', who: 'Vet',
    does: ['Check the reading beside the films, accept it, release the letter, or phone first.'],
    holds: 'Two readings that disagree, sides that look exchanged, a number that came by post and was keyed only once.',
    goesWrong: 'A reading of the wrong dog is withdrawn: each owner gets a correction that names nobody else, and the certificate’s page says so.',
  },
];
