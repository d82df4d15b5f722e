import { inAList } from '#libs/contracts/in-a-list';
import { viewName } from '../record/view-name.js';
import { dayIn, list, s, type MailData, type Template } from './mail-data.js';

interface DogLine { dog: string; order?: string; start?: string; problem?: string; earliestDate?: string }
const dogLines = (value: unknown): DogLine[] => (Array.isArray(value) ? (value as DogLine[]) : []);

const dog = (m: MailData) => s(m.data.dog);
const day = (m: MailData) => dayIn(m, m.data.day ?? m.data.dayWords);
const start = (m: MailData) => s(m.data.start);
const hello = (m: MailData) => m.t('Dear {name},', { name: m.toName });
const phone = (m: MailData) => (m.practice ? m.t('Questions? Call {practice}: {phone}.', { practice: m.practice.name, phone: m.practice.phone }) : '');
const page = (m: MailData) => (m.ownerLink ? m.t('Your page for {dog}: {link}', { dog: dog(m), link: m.ownerLink }) : '');
const where = (m: MailData) => ({ practice: m.practice?.name ?? '', address: m.practice?.address ?? '' });
const pictures = (m: MailData) => inAList(list(m.data.studies).map((study) => m.t.known(study)));
const dashed = (lines: readonly string[] | undefined) => list(lines).map((l) => `- ${l}`).join('\n');

/** Imaging that ended early: what was not taken, and what a further day would ask for. */
function notTaken(m: MailData): string[] {
  const missing = list(m.data.missing).map((view) => viewName(view, m.t)).join(', ');
  if (!missing) return [];
  return [
    m.data.woke
      ? m.t('Not all pictures were taken: {dog} woke, and we stopped. Missing: {missing}.', { dog: dog(m), missing })
      : m.t('Not all pictures were taken: {dog} was left to wake before the end. Missing: {missing}.', { dog: dog(m), missing }),
    m.t('We will call you. You can choose another day, for which we ask for your consent again and weigh and examine the dog again, or have the pictures read as they are.'),
  ];
}

/** A time that is free: in place of a visit, or for one who waits without any. */
function offered(m: MailData): string[] {
  const about = { dog: dog(m), day: day(m), start: start(m) };
  const until = m.data.untilDay ? `${dayIn(m, m.data.untilDay)}, ${s(m.data.untilTime)}` : s(m.data.until);
  const now = m.data.nowDay ? `${dayIn(m, m.data.nowDay)}, ${s(m.data.nowStart)}` : s(m.data.now);
  return now
    ? [
        m.t('A time has become free for {dog}: {day} at {start}, instead of {now}. Would it suit you?', { ...about, now }),
        m.t('Say yes or no on your page until {until}. After that it goes to the next who waits, and your visit stays as it is. Nothing changes for {dog} before you have said yes and had our confirmation.', { dog: dog(m), until }),
      ]
    : [
        m.t('A time has become free for {dog}: {day} at {start}. Would it suit you?', about),
        m.t('Say yes or no on your page until {until}. After that it goes to the next who waits, and you stay on the list. Nothing changes for {dog} before you have said yes and had our confirmation.', { dog: dog(m), until }),
      ];
}

function groupLine(m: MailData, l: DogLine, at: number): string {
  const number = String(at + 1);
  return l.order
    ? m.t('{number}. {dog}, {start}: booked. Page: {link}', { number, dog: l.dog, start: s(l.start), link: m.ownerLinks?.get(l.order) ?? '' })
    : m.t('{number}. {dog}: not booked. {problem}', { number, dog: l.dog, problem: problemOf(m, l) });
}

/** Why a dog was not booked is worked out in English; in another language what the owner can go by is said, and the desk tells the rest. */
function problemOf(m: MailData, { problem, earliestDate }: DogLine): string {
  if (m.t.language === 'en') return s(problem);
  return earliestDate ? m.t('Too young on that day. Old enough from {day}.', { day: dayIn(m, earliestDate) }) : m.t('Please call us; we tell you why.');
}

/** What owners are written, each in their own language. */
export const ownerMails = {
  confirmation: (m) => ({
    subject: m.t('{dog}: visit on {day}, {start}', { dog: dog(m), day: day(m), start: start(m) }),
    paragraphs: [
      hello(m),
      m.t('{dog} is booked on {day} at {start} at {practice}, {address}. Pictures: {pictures}.', { dog: dog(m), day: day(m), start: start(m), ...where(m), pictures: pictures(m) }),
      ...(m.data.moved ? [m.t('This is a new time. What you have already answered and signed stays as it is.')] : []),
      ...(m.data.advice ? [m.t('Before the visit (chosen by {vet}, veterinarian):', { vet: s(m.data.adviceBy) }), s(m.data.advice)] : []),
      m.t('Please answer a few questions, look at the estimate and sign on your page before the visit. You can say no to each part, and take a yes back.'),
      page(m),
      m.t('The calendar file is attached.'),
      phone(m),
    ],
  }),
  groupBooked: (m) => ({
    subject: m.t('{count} dogs: visit on {day}', { count: dogLines(m.data.lines).length, day: day(m) }),
    paragraphs: [
      hello(m),
      m.t('For {day} at {practice}, {address}. Pictures: {pictures}. The dogs follow one another:', { day: day(m), ...where(m), pictures: pictures(m) }),
      ...dogLines(m.data.lines).map((l, i) => groupLine(m, l, i)),
      ...(m.data.advice ? [m.t('Before the visit (chosen by {vet}, veterinarian), the same for each dog:', { vet: s(m.data.adviceBy) }), s(m.data.advice)] : []),
      m.t('Please answer a few questions, look at the estimate and sign on the page of each dog before the visit. You can say no to each part, and take a yes back.'),
      ...(dogLines(m.data.lines).some((l) => !l.order) ? [m.t('The times of the others do not depend on a dog that is not booked. We will gladly find another day for it.')] : []),
      m.t('The calendar file is attached.'),
      phone(m),
    ],
  }),
  reminder: (m) => ({
    subject: m.t('{dog}: your visit on {day}', { dog: dog(m), day: day(m) }),
    paragraphs: [
      hello(m),
      m.t('{dog} comes on {day} at {start}. Has anything changed? Each question on the page is one tap; “don’t know” is an answer.', { dog: dog(m), day: day(m), start: start(m) }),
      page(m),
      ...(m.data.advice ? [s(m.data.advice)] : []),
      phone(m),
    ],
  }),
  slotOffer: (m) => ({ subject: m.t('{dog}: an earlier time, {day}, {start}', { dog: dog(m), day: day(m), start: start(m) }), paragraphs: [hello(m), ...offered(m), page(m), phone(m)] }),
  statement: (m) => ({
    subject: m.t('{dog}: statement of charges', { dog: dog(m) }),
    paragraphs: [
      hello(m),
      m.t('For {dog}, order {order}, {practice} has charged:', { dog: dog(m), order: m.told?.accession ?? '', practice: m.practice?.name ?? '' }),
      dashed(m.told?.charges),
      ...(list(m.told?.payments).length > 0 ? [m.t('We have written down:'), dashed(m.told?.payments)] : []),
      list(m.told?.sums).join('\n'),
      phone(m),
    ],
  }),
  missed: (m) => ({
    subject: m.t('{dog}: your visit on {day}', { dog: dog(m), day: day(m) }),
    paragraphs: [
      hello(m),
      m.t('{dog} was expected on {day} at {start}, and we did not see you. We hope that all is well. Call us, and we find another day; the questions and signatures are asked again for it, because they are for one day.', { dog: dog(m), day: day(m), start: start(m) }),
      page(m),
      phone(m),
    ],
  }),
  cancelled: (m) => ({
    subject: m.t('{dog}: visit on {day} cancelled', { dog: dog(m), day: day(m) }),
    paragraphs: [hello(m), m.t('The visit on {day} at {start} is cancelled. {why}', { day: day(m), start: start(m), why: s(m.data.why) }), phone(m)],
  }),
  ownerLink: (m) => ({
    subject: m.t('{dog}: your page', { dog: dog(m) }),
    paragraphs: [hello(m), m.t('Here is a new link to your page. It shows where everything stands, and what we still need from you. Earlier links no longer work.'), page(m), phone(m)],
  }),
  goingHome: (m) => ({
    subject: m.t('{dog} goes home: please read', { dog: dog(m) }),
    paragraphs: [hello(m), m.t('The sheet for tonight is attached: what is to be expected, and when to call at once.'), ...notTaken(m), m.t('The number that answers now: {phone}.', { phone: s(m.data.call) })],
  }),
  result: (m) => ({
    subject: m.practice ? m.t('{dog}: a letter from {practice}', { dog: dog(m), practice: m.practice.name }) : m.t('{dog}: a letter from the practice', { dog: dog(m) }),
    paragraphs: [hello(m), m.t('A letter about the pictures is attached. It says what was read, how sure that is, and what it cannot tell. Please read it in quiet, and call us with any question.'), page(m), phone(m)],
  }),
  correction: (m) => ({
    subject: m.t('{dog}: a correction', { dog: dog(m) }),
    paragraphs: [hello(m), m.t('An earlier letter was not right. The attached letter says what holds now. We are sorry for the trouble.'), page(m), phone(m)],
  }),
  filmsRejected: (m) => ({
    subject: m.t('{dog}: some pictures again', { dog: dog(m) }),
    paragraphs: [hello(m), m.t('Some pictures could not be read by the centre. The attached letter says which, and what comes next. It is nobody’s fault.'), page(m), phone(m)],
  }),
  transferSeller: (m) => ({
    subject: m.t('{dog}: a new owner', { dog: dog(m) }),
    paragraphs: [hello(m), m.t('We have written down that {dog} has a new owner since {day}. May the new owner see what comes of the pictures? Please say so on your page. Nothing about you is shown to them.', { dog: dog(m), day: day(m) }), page(m), phone(m)],
  }),
  transferBuyer: (m) => ({
    subject: m.t('{dog}: your page', { dog: dog(m) }),
    paragraphs: [hello(m), m.t('You are {dog}’s owner since {day}. Pictures were asked for before that. If you and the earlier owner both agree, you see what comes of them. Please say so on your page.', { dog: dog(m), day: day(m) }), page(m), phone(m)],
  }),
  newPractice: (m) => ({
    subject: m.t('{dog}: {practice} looks after you now', { dog: dog(m), practice: s(m.data.practice) }),
    paragraphs: [
      hello(m),
      m.t('As agreed with you, {practice} has taken over everything about {dog} from us. Your page shows how to reach them.', { practice: s(m.data.practice), dog: dog(m) }),
      ...list(m.data.days).map((each) => m.t('The visit with us on {day} is cancelled; they find a new day with you.', { day: dayIn(m, each) })),
      page(m),
    ],
  }),
  centreClosed: (m) => ({
    subject: m.t('{dog}: the reading centre has closed', { dog: dog(m) }),
    paragraphs: [hello(m), m.t('{centre}, which was to read {dog}’s pictures, has closed. No picture is lost. We will ask you which centre may read them instead.', { centre: m.t.known(s(m.data.centre)), dog: dog(m) }), page(m), phone(m)],
  }),
} satisfies Record<string, Template>;
