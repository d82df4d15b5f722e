import type { Pronouns } from '../words.js';

/**
 * The fixed words of the papers, in short sentences. A test holds them at a reading age of 12.
 * Behind them: worse grades go with more trouble on average, yet many dogs with a poor film never see a vet for it
 * (Krontveit et al., Prev Vet Med 2012;103:219-227); dogs kept lean have less arthritis of the hips
 * (Kealy et al., J Am Vet Med Assoc 2000;217:1678-1680).
 */

export interface DogWords extends Pronouns {
  /** What the owner calls the dog. */
  name: string;
  /** The same with the possessive: "Brannoch’s". */
  names: string;
}

export const LETTER_HEADINGS = {
  whichDog: 'Which dog',
  whyNew: 'Why a new letter',
  whatWasWrong: 'What was wrong',
  whatWasDone: 'What was done, and who read it',
  whatHappened: 'What happened',
  whatWasFound: 'What was found',
  notRead: 'What could not be read',
  howSure: 'How sure this is',
  cannotTell: 'What the reading cannot tell',
  mattersToo: 'What matters too',
  breeding: 'For breeding',
  next: 'What to do next',
  seeVet: 'When to see a vet',
  afterSleep: 'After the sleep medicine',
  disagree: 'If you disagree',
  whoSees: 'Who sees this',
  check: 'How to check this paper',
  questions: 'Questions',
} as const;

export const LETTER_TEXTS = {
  sides: (dog: DogWords) => `Left and right are ${dog.names} own.`,
  allRead: 'Every joint that was sent could be read.',
  noBlame: 'This is nobody’s fault.',
  noFigure: 'No published figure for this protocol says how far a second look might differ.',
  cannotTell: (dog: DogWords) => [
    `It does not tell whether ${dog.name} has pain or will be lame. It does not tell whether ${dog.he} will get arthritis later. It does not tell what ${dog.his} pups will have.`,
    'Dogs with a worse reading have more trouble on the whole. But some dogs with a good reading have trouble. And many dogs with a poor one never need a vet for it.',
  ],
  mattersToo: (dog: DogWords) => [
    `How much ${dog.he} weighs, how fast ${dog.he} grew, how ${dog.he} plays and runs, and the joints of ${dog.his} parents, brothers and sisters. Keeping ${dog.him} lean helps ${dog.his} joints. Ask us what weight is right.`,
  ],
  breeding: [
    'This is one fact among many. Health, temper, how close two dogs are in blood, and how many dogs the breed has all matter too. Please ask us or your breed’s adviser before you decide. We do not decide for you.',
  ],
  seeVet: (dog: DogWords) => [
    `See a vet soon if ${dog.name} limps, is stiff after rest, hops with both hind legs at once, will not jump, or shows pain. Do so whatever this letter says.`,
  ],
  afterSleep: (dog: DogWords, given: { on: string; sheet: boolean }) => [
    given.sheet
      ? `The sheet you took home on ${given.on} was for the first days. If ${dog.his} breathing, drinking, coughing or mood has changed since then, call us.`
      : `If ${dog.his} breathing, drinking, coughing or mood has changed since ${given.on}, call us.`,
    `Sleep medicine always carries a small risk. Tell any vet that ${dog.he} had it, before ${dog.he} has it again. It should not be given again without a good reason.`,
  ],
  beforeSleep: (dog: DogWords) => [
    `${dog.name} had no sleep medicine for these pictures. If ${dog.he} ever needs it, it carries a small risk. Talk with the vet first.`,
  ],
  whoSees: (others: string) =>
    `You, our practice and the reading centre${others}. We show it to nobody else unless you agree or the law asks for it.`,
  statistics: {
    yes: (on: string) =>
      `You said yes on ${on} to the use of the reading in the breed’s figures, without your name. You can change that. What has been printed by then stays printed.`,
    no: (on: string) => `You said no on ${on} to the use of the reading in the breed’s figures. So it is not used there.`,
    withdrawn: (on: string) =>
      `You took back your yes to the breed’s figures on ${on}. What had been printed by then stays printed.`,
  },
  check: (address: string, serial: string) =>
    `Open **${address}** and type **${serial}**. The page shows every fact printed on the certificate, and if it still stands. If one fact differs, the paper was changed.`,
  replaces: (day: string) => `This letter replaces the one of ${day}. Please do not use that one any more.`,
  oldSerial: (serial: string) => `The certificate ${serial} no longer stands. Its page says so.`,
  corrects: (day: string) => `Our letter of ${day} was wrong. Please do not use it any more. We are sorry.`,
  rejected: (dog: DogWords) => `This is nobody’s fault. It says nothing about ${dog.names} joints.`,
  again: (dog: DogWords) =>
    `New pictures may need sleep medicine again. That carries a small risk. So the vet looks at ${dog.name} first and talks with you. You may say no.`,
} as const;

export const CERTIFICATE_TEXTS = {
  limits: (dog: DogWords, joints: string) =>
    `These readings describe ${joints} on one day. They do not tell whether ${dog.name} has pain or will be lame, whether ${dog.he} will get arthritis later, or what ${dog.his} pups will have.`,
  caution:
    'Pictures like these often need sleep medicine, which carries a small risk. Tell the vet in charge about it before it is given again. Do not repeat pictures without a reason.',
  check: (address: string) =>
    `**${address}** shows every fact printed here, and whether it still stands: valid, amended or withdrawn. If one fact differs there, this paper was changed. The code is signed and can be checked without the server.`,
} as const;

export const GOING_HOME_TEXTS = {
  normal: 'Normal tonight',
  whatToDo: 'What to do',
  call: (dog: DogWords) => `Call at once if ${dog.name}`,
  worried: '**or if you are worried.**',
  slept: (dog: DogWords, times: { from: string; until: string }) =>
    `${dog.name} slept with medicine from **${times.from} to ${times.until}**`,
  reversed: 'and was woken with another one.',
  woke: 'and then woke up.',
  recovered: (dog: DogWords, at: string) => `At **${at}** ${dog.he} was awake enough to go home with you.`,
  tellVets: (dog: DogWords) => `Tell any vet that ${dog.he} had sleep medicine today, before ${dog.he} has it again.`,
} as const;

export const CONSENT_TEXTS = {
  intro: 'This is your copy of what you were told and what you answered. You may take back a yes at any time. Call us or write to us.',
  notUndone: 'What can no longer be undone',
} as const;
