import type { Sentence } from '#libs/words/words';

/**
 * The fixed words of the papers, in short sentences. A test holds them at a reading age of 12.
 * Behind them: worse grades go with more trouble on average, yet many dogs with a poor film never see a vet for it
 * (Krontveit et al., Prev Vet Med 2012;103:219-227); dogs kept lean have less arthritis of the hips
 * (Kealy et al., J Am Vet Med Assoc 2000;217:1678-1680).
 * Each is also what its translation is found by.
 */

export const LETTER_HEADINGS = {
  whichDog: 'Which dog',
  whyNew: 'Why a new letter',
  whatWasWrong: 'What was wrong',
  whatWasDone: 'What was done, and who read it',
  whatHappened: 'What happened',
  whatWasFound: 'What was found',
  notRead: 'What could not be read',
  howSure: 'How sure this is',
  among: 'Among other dogs of the breed',
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
} as const satisfies Record<string, Sentence>;

export const LETTER_TEXTS = {
  sides: 'Left and right are {names} own.',
  allRead: 'Every joint that was sent could be read.',
  noBlame: 'This is nobody’s fault.',
  secondLooks: 'We know how far two looks differ from a study in which dogs were X-rayed more than once ({source}).',
  noFigure: 'No published figure for this protocol says how far a second look might differ.',
  cannotTell: 'It does not tell whether {name} has pain or will be lame. It does not tell whether {he} will get arthritis later. It does not tell what {his} pups will have.',
  onTheWhole: 'Dogs with a worse reading have more trouble on the whole. But some dogs with a good reading have trouble. And many dogs with a poor one never need a vet for it.',
  mattersToo:
    'How much {he} weighs, how fast {he} grew, how {he} plays and runs, and the joints of {his} parents, brothers and sisters. Keeping {him} lean helps {his} joints. Ask us what weight is right.',
  breeding:
    'This is one fact among many. Health, temper, how close two dogs are in blood, and how many dogs the breed has all matter too. Please ask us or your breed’s adviser before you decide. We do not decide for you.',
  seeVet: 'See a vet soon if {name} limps, is stiff after rest, hops with both hind legs at once, will not jump, or shows pain. Do so whatever this letter says.',
  withSheet: 'The sheet you took home on {day} was for the first days. If {his} breathing, drinking, coughing or mood has changed since then, call us.',
  withoutSheet: 'If {his} breathing, drinking, coughing or mood has changed since {day}, call us.',
  sleepRisk: 'Sleep medicine always carries a small risk. Tell any vet that {he} had it, before {he} has it again. It should not be given again without a good reason.',
  beforeSleep: '{name} had no sleep medicine for these pictures. If {he} ever needs it, it carries a small risk. Talk with the vet first.',
  whoSees: 'You, our practice and the reading centre{others}. We show it to nobody else unless you agree or the law asks for it.',
  statisticsYes:
    'You said yes on {day} to the use of the reading in the breed’s figures, without your name. You can change that. The next count then leaves it out. What was counted or printed by then stays, as numbers without a name.',
  statisticsNo: 'You said no on {day} to the use of the reading in the breed’s figures. So it is not used there.',
  statisticsWithdrawn: 'You took back your yes to the breed’s figures on {day}. What had been printed by then stays printed.',
  check: 'Open **{address}** and type **{serial}**. The page shows every fact printed on the certificate, and if it still stands. If one fact differs, the paper was changed.',
  replaces: 'This letter replaces the one of {day}. Please do not use that one any more.',
  oldSerial: 'The certificate {serial} no longer stands. Its page says so.',
  corrects: 'Our letter of {day} was wrong. Please do not use it any more. We are sorry.',
  rejected: 'This is nobody’s fault. It says nothing about {names} joints.',
  again: 'New pictures may need sleep medicine again. That carries a small risk. So the vet looks at {name} first and talks with you. You may say no.',
} as const satisfies Record<string, Sentence>;

export const CERTIFICATE_TEXTS = {
  limits: 'These readings describe {joints} on one day. They do not tell whether {name} has pain or will be lame, whether {he} will get arthritis later, or what {his} pups will have.',
  caution: 'Pictures like these often need sleep medicine, which carries a small risk. Tell the vet in charge about it before it is given again. Do not repeat pictures without a reason.',
  check: '**{address}** shows every fact printed here, and whether it still stands: valid, amended or withdrawn. If one fact differs there, this paper was changed. The code is signed and can be checked without the server.',
} as const satisfies Record<string, Sentence>;

export const GOING_HOME_TEXTS = {
  normal: 'Normal tonight',
  whatToDo: 'What to do',
  call: 'Call at once if {name}',
  worried: '**or if you are worried.**',
  reversed: '{name} slept with medicine from **{from} to {until}** and was woken with another one.',
  woke: '{name} slept with medicine from **{from} to {until}** and then woke up.',
  recovered: 'At **{at}** {he} was awake enough to go home with you.',
  tellVets: 'Tell any vet that {he} had sleep medicine today, before {he} has it again.',
} as const satisfies Record<string, Sentence>;

export const CONSENT_TEXTS = {
  intro: 'This is your copy of what you were told and what you answered. You may take back a yes at any time. Call us or write to us.',
  notUndone: 'What can no longer be undone',
} as const satisfies Record<string, Sentence>;
