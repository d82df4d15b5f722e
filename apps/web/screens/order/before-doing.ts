import type { ActionName } from '#libs/contracts/actions/all';
import { t } from '../../words/t.js';
import type { PageSentence } from '#libs/words/de/staff/page-words';

/** Said before an act that asks for nothing but leaves something behind. */
const says: Partial<Record<ActionName, PageSentence>> = {
  acceptReferral: 'This practice takes the dog over. The order moves here, and the other practice keeps sight of it.',
  recordMissed: 'The dog did not come. The owner can be offered another day.',
  checkFitness: 'Room, operator and equipment are checked again for that day.',
  endImaging: 'No more films are taken in this visit. The dog goes on to wake.',
  seeProtocolChange: 'The study’s protocol has a new version. Going on says that you have seen it.',
  seal: 'Every film taken goes into the package, also ones that are not good. Afterwards nothing in it can be changed.',
  sealSupplement: 'The films that came later go into a package of their own.',
  send: 'The package goes to the centre. This cannot be called back.',
  releaseLetter: 'Letter and certificate are written, and mailed to those who get the result.',
  releaseAgain: 'The letter goes again to those who did not get it.',
  releaseCorrection: 'A correction goes to everybody who got the letter. It names nobody else. The certificate’s page says already that the paper was withdrawn.',
  askWhichStands: 'Both readings go to the centre by mail, side by side, with the question which of them stands.',
  tellCentre: 'The centre is told by mail.',
};

export const beforeDoing = (action: ActionName) => t(says[action] ?? 'This is written into the order and stays there.');
