import type { Language } from '#libs/words/languages';
import { wordsOnPaper, type Sentence, type Words } from '#libs/words/words';
import { LETTER_TEMPLATE_VERSION, type LetterSnapshot } from '#libs/documents/snapshots';
import { nameAtDesk } from '#libs/science/protocols/catalogue';
import { addDays } from '#libs/pathway/days';
import { isOpenStudy } from '#libs/pathway/steps';
import { filmsOf } from '../dispatch/films-of.js';
import type { Work } from '../record/work.js';
import { jointsOf } from '../result/joints-of.js';
import { dogOnPaper, lines, moment, practiceOnPaper, reach, today } from './on-paper.js';

export interface Addressee { id: string; name: string; email: string | null; address: string | null; channel: 'mail' | 'post'; language: Language }

type Base = Omit<LetterSnapshot, 'kind' | 'studies' | 'stillOut' | 'disagree' | 'check' | 'replaces' | 'corrects' | 'rejected' | 'cost'>;

/** What every letter about an order says, whoever it goes to and whatever it brings. */
export async function letterBase(work: Work, study: string, to: Addressee): Promise<Base> {
  const t = wordsOnPaper(to.language);
  const films = filmsOf(work, study);
  const visit = work.facts('exposureTaken').find((f) => films.some((film) => film.exposure === f.exposure));
  const booked = work.facts('visitBooked').filter((f) => f.visit === visit?.visit).at(-1);
  const where = work.order.practices[booked?.where ?? work.order.practice];
  const home = work.order.practices[work.order.practice]!;
  const packed = new Set(work.facts('packageSealed').filter((f) => f.study === study).flatMap((f) => f.exposures));
  const statistics = work.facts('consentGiven').filter((f) => f.purpose === 'statistics').at(-1);
  const referred = booked && booked.where !== work.order.practice ? where : undefined;
  return {
    templateVersion: LETTER_TEMPLATE_VERSION,
    paper: 'A4',
    lang: to.language,
    issuedAt: moment(work),
    practice: practiceOnPaper(work),
    orderNumber: work.order.accession,
    addressee: { name: to.name, lines: to.address ? lines(to.address) : [] },
    dog: await dogOnPaper(work),
    visit: {
      date: visit?.imageDay ?? today(work),
      place: referred ? referred.name : home.place ? t('our practice in {place}', { place: home.place }) : t('our practice'),
      askedBy: t('You asked us for them.'),
      rest: 'sedation',
      exposures: films.length,
      allSent: films.every((f) => packed.has(f.exposure)),
      goingHomeSheet: work.facts('sheetGiven').some((f) => f.visit === visit?.visit),
    },
    contact: { name: work.actor.name, role: t('vet'), ...reach(work, t) },
    nextSteps: nextSteps(work, study).map((step) => t(step)),
    whoSees: { others: referred ? [referred.name] : [], statistics: statistics ? { answer: statistics.answer, on: statistics.at.slice(0, 10) } : null },
  };
}

function nextSteps(work: Work, study: string): Sentence[] {
  const accepted = work.facts('resultAccepted').filter((f) => f.study === study).at(-1);
  const arrived = work.facts('resultArrived').find((f) => f.result === accepted?.result);
  const joints = arrived ? jointsOf(work.facts, arrived) : [];
  return joints.some((j) => j.value === undefined)
    ? ['One joint could not be read. Ask us whether a new picture makes sense.']
    : ['Nothing has to be done now. No new picture is needed.', 'Talk with us before you decide about breeding.'];
}

const STILL: Record<string, Sentence> = {
  asked: 'The pictures are still to be taken.', imaging: 'Some pictures are still to be taken.', rejected: 'Some pictures have to be taken again.',
  ready: 'The pictures are about to be sent.', sealed: 'The pictures are about to be sent.',
};

/** Other studies of the same order that are still on the road. */
export function stillOut(work: Work, study: string, t: Words): { title: string; words: string }[] {
  return Object.values(work.evaluation.studies)
    .filter((s) => s.id !== study && isOpenStudy(s.step) && s.step !== 'accepted' && s.step !== 'released')
    .map((s) => ({ title: t.known(nameAtDesk(s)), words: `${t(STILL[s.step] ?? 'The pictures are with the reader.')} ${t('You get a letter of its own.')}` }));
}

export function disagree(work: Work, study: string, t: Words): { how: string; until: string; cost: null } {
  const centre = work.order.rules.centres[work.evaluation.studies[study]!.centre];
  return {
    how: t('Tell us. Another reader then sees the same pictures, and not the first reading. What that reader finds then stands, whichever way it goes.'),
    until: addDays(today(work), centre?.appealDays ?? 30),
    cost: null,
  };
}

