import { capital } from '../../../design/format.js';
import type { PageSentence } from '#libs/words/de/staff/page-words';
import { t } from '../../../words/t.js';

const words: Record<string, PageSentence> = {
  any: 'Any owner’s yes is enough', all: 'Every owner and co-owner signs',
  yes: 'Yes', no: 'No', owner: 'Owner', agent: 'Agent', practice: 'Practice', seller: 'Seller', buyer: 'New owner',
  missingViews: 'Views are missing', rejected: 'Films were sent back', lost: 'Films were lost', first: 'First visit',
  declined: 'Declined', takenBack: 'Taken back', phone: 'By phone', mail: 'By mail', paper: 'On paper', link: 'By link',
  booking: 'Booking', reminder: 'Reminder', admission: 'Admission', table: 'Table',
  unwell: 'Unwell today', identity: 'Identity not certain', unfit: 'Not fit for sedation', ownerDecided: 'The owner decided', emergency: 'An emergency',
  firstPlan: 'First plan', topUp: 'More during the sedation', drawn: 'Drawn up', given: 'Given', discarded: 'Discarded', reversal: 'Reversal given',
  awake: 'Awake, answers', stands: 'Stands', swallows: 'Swallows', warm: 'Warm', gums: 'Gums pink', breathing: 'Breathes easily', comfortable: 'Comfortable',
  otherDog: 'Another dog', testFilm: 'A test film', L: 'L', R: 'R', both: 'Both', none: 'None seen',
  accept: 'Accept', retake: 'Retake', page: 'Reader’s page', file: 'File', post: 'Post', webhook: 'Centre’s server',
  study: 'The study', sendAll: 'Sending every film', notRepeated: 'Not done again', centreClosed: 'The centre closed', notPossible: 'Not possible',
  unpaid: 'Not paid', bounced: 'Mail came back', closed: 'Closed', noAnswer: 'No answer', implausible: 'Cannot be right', sentTwice: 'Sent twice',
  centreTookBack: 'The centre took it back', delivered: 'Delivered', unknown: 'Not known',
};

/** Said when it is shown: what a person chose among, or what was chosen. */
export const optionWords = (option: string) => (words[option] ? t(words[option]) : capital(option.replace(/([a-z])([A-Z])/g, '$1 $2').toLowerCase()));
