import { inAList } from '#libs/contracts/in-a-list';
import { languages, type Language } from '#libs/words/languages';
import { listed } from '#libs/words/days';
import { wordsIn, type Words } from '#libs/words/words';
import type { Action } from './actions.js';
import type { Hold, HoldDetail } from './evaluation.js';
import type { Role } from './facts.js';
import { holdPhrases } from './hold-words-table.js';
import type { OrderStep, StudyStep, VisitStep } from './steps.js';
import { localDay } from './zones.js';

const english = wordsIn('en');

export interface HoldWords {
  /** What is missing, to be set in bold with a full stop after it. */
  title: string;
  /** Who can supply it, how, and by when. */
  rest: string;
}

export interface Naming {
  /** Names for ids (people, studies, views, centres, practices) and for roles: `{ vet: 'Ruan Tiedt' }`. */
  names?: Record<string, string>;
  /** Where instants are read as local time. */
  zone?: string;
  /** In whose language; English where nobody is named. */
  t?: Words;
}

const roleWords: Record<Role, string> = {
  desk: 'the desk', vet: 'the vet', nurse: 'a nurse', radiographer: 'the radiographer', manager: 'the practice manager',
  owner: 'the owner', agent: 'the owner’s agent', reader: 'the reading centre', queue: 'the program',
};

const questionWords: Record<string, string> = {
  season: 'in season', pregnant: 'pregnant', nursing: 'nursing', ill: 'ill', medicine: 'on medicine', operated: 'operated before',
};

const otherWords: Record<string, string> = {
  OPERATOR: 'operator', EQUIPMENT: 'equipment', VIEWS_NOT_HERE: 'views not taken here', REPEAT_TOO_SOON: 'too soon after the last',
  IDENTITY: 'identity', RANGE: 'value out of range', SIDES: 'sides may be swapped', DATE: 'date',
  unpaid: 'Not paid', bounced: 'The mail came back', closed: 'The centre is closed', lost: 'The films are lost',
  noAnswer: 'No answer', failed: 'Sending did not work', unknown: 'Not known', notArrived: 'They did not',
};

export function holdWords(hold: Hold, naming: Naming = {}): HoldWords {
  const phrases = holdPhrases[hold.code];
  const t = naming.t ?? english;
  const told = phrases.how + phrases.title;
  const by = hold.by !== undefined && !told.includes('{by}') ? ` ${deadline(hold.by, naming)}` : '';
  const until = hold.until !== undefined && hold.until !== hold.by && !/\{(until|earliestDate)\}/.test(told)
    ? ` ${t.known('Until {day}.', { day: onDay(hold.until, naming) })}` : '';
  return {
    title: t.known(phrases.title),
    rest: fill(phrases.how, hold, naming) + by + until,
  };
}

/** One sentence for the owner's page, or null where a hold is not theirs to see. */
export function ownersSentence(hold: Hold, naming: Naming, t: Words): string | null {
  const phrase = holdPhrases[hold.code].owner;
  if (phrase === null) return null;
  const day = (when: string | undefined) => (when === undefined ? t('then') : dayWords(when.includes('T') ? localDay(when, naming.zone ?? 'UTC') : when, t.language));
  return t(phrase, { until: day(hold.until), earliestDate: day(hold.detail?.earliestDate), questions: detailWords('questions', hold.detail ?? {}, naming) });
}

/** A hold in one line of plain text, for a mail or a refusal. */
export function holdSentence(hold: Hold, naming: Naming = {}): string {
  const { title, rest } = holdWords(hold, naming);
  return `${title}${/[.?]$/.test(title) ? '' : '.'} ${rest}`;
}

function deadline(by: string, naming: Naming): string {
  const t = naming.t ?? english;
  return by.includes('T') ? t.known('Due {time}.', { time: clock(by, naming) }) : t.known('By {day}.', { day: onDay(by, naming) });
}

function fill(text: string, hold: Hold, naming: Naming): string {
  const t = naming.t ?? english;
  const inPlace = (word: string): string => {
    const role = word.toLowerCase();
    if (role in roleWords) {
      const person = (role === 'owner' && ownersOf(hold, naming)) || (naming.names?.[role] ?? t.known(roleWords[role as Role]));
      return word === role ? person : person.charAt(0).toUpperCase() + person.slice(1);
    }
    if (word === 'until') return hold.until === undefined ? t.known('then') : onDay(hold.until, naming);
    return detailWords(word, hold.detail ?? {}, naming);
  };
  return t.known(text, Object.fromEntries([...text.matchAll(/\{(\w+)\}/g)].map(([, word]) => [word!, inPlace(word!)])));
}

/** By name, where each owner gives a word of their own. */
function ownersOf(hold: Hold, naming: Naming): string {
  const t = naming.t ?? english;
  return listed(t.language, hold.detail?.owners?.map((id) => naming.names?.[id] ?? t.known('a co-owner')) ?? []);
}

function detailWords(word: string, detail: HoldDetail, naming: Naming): string {
  const t = naming.t ?? english;
  const value = detail[word as keyof HoldDetail];
  if (value === undefined) return t.known(word === 'to' ? 'the other practice' : 'not known');
  if (word === 'daysShort' && typeof value === 'number') return t.known('{count, plural, =1 {one day} one {# day} other {# days}}', { count: value });
  if (word === 'earliestDate' && typeof value === 'string') return onDay(value, naming);
  const values = Array.isArray(value) ? value : [value];
  return inAList(values.map((one) => naming.names?.[one] ?? t.known(questionWords[one] ?? otherWords[one] ?? String(one))));
}

const dayForm = (language: Language) => new Intl.DateTimeFormat(languages[language].dates, { weekday: 'long', day: 'numeric', month: 'long', timeZone: 'UTC' });
const dayForms = { en: dayForm('en'), de: dayForm('de') };

/** A day as people write it: Friday 27 November, Freitag, 27. November. */
export function dayWords(day: string, language: Language = 'en'): string {
  const time = Date.parse(`${day}T00:00:00Z`);
  return Number.isNaN(time) ? day : dayForms[language].format(time).replace(language === 'en' ? ',' : '', '');
}

const onDay = (when: string, { zone = 'UTC', t = english }: Naming): string => dayWords(when.includes('T') ? localDay(when, zone) : when, t.language);

const clock = (instant: string, { zone = 'UTC' }: Naming): string =>
  new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit', timeZone: zone }).format(Date.parse(instant));

export const stepLabels: Record<OrderStep | VisitStep | StudyStep, string> = {
  wanted: 'To be booked', booked: 'Booked', admitted: 'Here', sedated: 'Asleep', imaged: 'Waking', recovered: 'Recovered',
  home: 'Gone home', cancelled: 'Cancelled', missed: 'Did not come', turnedAway: 'Turned away', died: 'Died',
  rejected: 'Sent back', asked: 'Asked for', imaging: 'Being imaged', ready: 'Films to send', sealed: 'Sealed', sent: 'Sent',
  withCentre: 'With the centre', appealed: 'Second reading', answered: 'Result to check', accepted: 'Accepted',
  released: 'Letter sent', reported: 'Reported', ended: 'Ended', atVisit: 'At a visit', closed: 'Closed', empty: 'Nothing chosen yet',
  none: 'Not opened',
};

export const stepLabel = (step: string): string => stepLabels[step as keyof typeof stepLabels] ?? step;

/** Short words for buttons. */
export const actionLabels: Record<Action, string> = {
  openOrder: 'Open order', addStudy: 'Add a study', namePayer: 'Name who pays', confirmAddressees: 'Confirm addressees',
  nameSigners: 'Who must sign', chooseLetterTime: 'When letters may come',
  openVisit: 'Plan a visit', cancelOrder: 'Cancel order', offerReferral: 'Refer', acceptReferral: 'Accept referral',
  closeReferral: 'Take back or decline', recordTransfer: 'Dog sold', agreeTransfer: 'Agree to sharing', handOver: 'Hand over',
  recordDeath: 'Dog died', recordHarm: 'Record harm', nameCaseOwner: 'Name who speaks', liftSilence: 'Lift silence',
  liftLegalHold: 'Lift legal hold', erasePerson: 'Erase a person', answerStatistics: 'Answer on statistics',
  book: 'Book', cancelVisit: 'Cancel visit', admit: 'Admit', recordMissed: 'Did not come', acceptEstimate: 'Accept estimate',
  giveAnswers: 'Answer questions', judgeAnswers: 'Judge answers', checkFitness: 'Check again', leaveStudyOut: 'Leave a study out',
  consentSedation: 'Consent to sedation', withdrawSedation: 'Withdraw consent', turnAway: 'Turn away', scanDog: 'Scan', settleIdentity: 'Settle identity',
  examine: 'Examine', startSedation: 'Start sedation', signPlan: 'Sign plan', topUp: 'Give more sedation', endImaging: 'End imaging',
  stopImaging: 'Stop imaging', recordReading: 'Take reading', recordDrug: 'Record drug', recordEvent: 'Record event',
  signRecovery: 'Sign recovery', giveSheet: 'Give going-home sheet', sendHome: 'Send home', assignFilm: 'Assign film',
  disownFilm: 'Not this dog’s film', logRoom: 'Who was in the room', markFilm: 'Set points on a film', stateSize: 'Size of a picture’s pixels',
  consentStudy: 'Consent to study', consentSendAll: 'Agree to sending all', withdrawStudy: 'Withdraw consent',
  seeProtocolChange: 'Read what changed', endStudy: 'End study', decideAfterDeath: 'Decide after death', takeView: 'Take view',
  judgeView: 'Accept or retake', settleViews: 'Go on with these', seal: 'Seal package', send: 'Send', sealSupplement: 'Seal supplement',
  resolveSend: 'Did it arrive?', acknowledge: 'Acknowledge', rejectFilms: 'Send films back', enterResult: 'Enter result',
  recordCause: 'Say why no answer', clearCause: 'Seen to', recordAutoReply: 'An automatic answer came', takeChase: 'Take over asking', changeCentre: 'Change centre',
  keyResult: 'Key result', explainResult: 'Explain', refuseResult: 'Refuse result', askWhichStands: 'Ask the centre which stands', settleConflict: 'Settle conflict',
  acceptResult: 'Accept result', setPhoneFirst: 'Phone first', releaseLetter: 'Release letter', recordCall: 'Owner was called',
  withdrawResult: 'Withdraw result', recordOutcome: 'Record delivery', resolveLetter: 'Did the letter arrive?',
  releaseAgain: 'Send letter again', askAppeal: 'Ask for second reading', closeAppeal: 'Close appeal',
  releaseCorrection: 'Send correction', releaseFilmsRejected: 'Tell the owner: pictures again', tellCentre: 'Centre was told',
  tellOfNote: 'Centre was told by phone or mail',
};
