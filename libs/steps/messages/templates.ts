/** What a mail is written from: frozen when it was decided; links are made when it is sent. */
export interface MailData {
  data: Record<string, unknown>;
  toName: string;
  practice: { name: string; phone: string; address: string } | null;
  ownerLink?: string;
  /** For a mail about several dogs: each order's page. */
  ownerLinks?: ReadonlyMap<string, string>;
  readerLink?: string;
  joinLink?: string;
}

export interface MailText {
  /** Never says anything about a result. */
  subject: string;
  paragraphs: string[];
}

export type Template = (mail: MailData) => MailText;
const s = (value: unknown): string => (typeof value === 'string' || typeof value === 'number' ? String(value) : '');
const list = (value: unknown): string[] => (Array.isArray(value) ? value.map(s) : []);
const phone = (m: MailData) => (m.practice ? `Questions? Call ${m.practice.name}: ${m.practice.phone}.` : '');
const page = (m: MailData) => (m.ownerLink ? `Your page for ${s(m.data.dog)}: ${m.ownerLink}` : '');
const lines = (value: unknown): { dog: string; order?: string; start?: string; problem?: string }[] => (Array.isArray(value) ? (value as { dog: string }[]) : []);
const hello = (m: MailData) => `Dear ${m.toName},`;

/** Imaging that ended early: what was not taken, and what a further day would ask for. */
const notTaken = (m: MailData): string[] => {
  const missing = list(m.data.missing);
  if (missing.length === 0) return [];
  return [
    `Not all pictures were taken: ${s(m.data.dog)} ${m.data.woke ? 'woke, and we stopped' : 'was left to wake before the end'}. Missing: ${missing.join(', ')}.`,
    'We will call you. You can choose another day, for which we ask for your consent again and weigh and examine the dog again, or have the pictures read as they are.',
  ];
};

export const templates = {
  confirmation: (m) => ({
    subject: `${s(m.data.dog)}: visit on ${s(m.data.dayWords)}, ${s(m.data.start)}`,
    paragraphs: [
      hello(m),
      `${s(m.data.dog)} is booked on ${s(m.data.dayWords)} at ${s(m.data.start)} at ${m.practice?.name ?? ''}, ${m.practice?.address ?? ''}. Pictures: ${list(m.data.studies).join(', ')}.`,
      ...(m.data.moved ? ['This is a new time. What you have already answered and signed stays as it is.'] : []),
      ...(m.data.advice ? [`Before the visit (chosen by ${s(m.data.adviceBy)}, veterinarian):`, s(m.data.advice)] : []),
      'Please answer a few questions, look at the estimate and sign on your page before the visit. You can say no to each part, and take a yes back.',
      page(m),
      'The calendar file is attached.',
      phone(m),
    ],
  }),
  groupBooked: (m) => ({
    subject: `${lines(m.data.lines).length} dogs: visit on ${s(m.data.dayWords)}`,
    paragraphs: [
      hello(m),
      `For ${s(m.data.dayWords)} at ${m.practice?.name ?? ''}, ${m.practice?.address ?? ''}. Pictures: ${list(m.data.studies).join(', ')}. The dogs follow one another:`,
      ...lines(m.data.lines).map((l, i) => (l.order ? `${i + 1}. ${l.dog}, ${s(l.start)}: booked. Page: ${m.ownerLinks?.get(l.order) ?? ''}` : `${i + 1}. ${l.dog}: not booked. ${s(l.problem)}`)),
      ...(m.data.advice ? [`Before the visit (chosen by ${s(m.data.adviceBy)}, veterinarian), the same for each dog:`, s(m.data.advice)] : []),
      'Please answer a few questions, look at the estimate and sign on the page of each dog before the visit. You can say no to each part, and take a yes back.',
      ...(lines(m.data.lines).some((l) => !l.order) ? ['The times of the others do not depend on a dog that is not booked. We will gladly find another day for it.'] : []),
      'The calendar file is attached.',
      phone(m),
    ],
  }),
  reminder: (m) => ({
    subject: `${s(m.data.dog)}: your visit on ${s(m.data.dayWords)}`,
    paragraphs: [hello(m), `${s(m.data.dog)} comes on ${s(m.data.dayWords)} at ${s(m.data.start)}. Has anything changed? Each question on the page is one tap; “don’t know” is an answer.`, page(m), ...(m.data.advice ? [s(m.data.advice)] : []), phone(m)],
  }),
  slotOffer: (m) => ({
    subject: `${s(m.data.dog)}: an earlier time, ${s(m.data.dayWords)}, ${s(m.data.start)}`,
    paragraphs: [
      hello(m),
      `A time has become free for ${s(m.data.dog)}: ${s(m.data.dayWords)} at ${s(m.data.start)}${m.data.now ? `, instead of ${s(m.data.now)}` : ''}. Would it suit you?`,
      `Say yes or no on your page until ${s(m.data.until)}. After that it goes to the next who waits, and ${m.data.now ? 'your visit stays as it is' : 'you stay on the list'}. Nothing changes for ${s(m.data.dog)} before you have said yes and had our confirmation.`,
      page(m),
      phone(m),
    ],
  }),
  missed: (m) => ({
    subject: `${s(m.data.dog)}: your visit on ${s(m.data.dayWords)}`,
    paragraphs: [hello(m), `${s(m.data.dog)} was expected on ${s(m.data.dayWords)} at ${s(m.data.start)}, and we did not see you. We hope that all is well. Call us, and we find another day; the questions and signatures are asked again for it, because they are for one day.`, page(m), phone(m)],
  }),
  cancelled: (m) => ({ subject: `${s(m.data.dog)}: visit on ${s(m.data.dayWords)} cancelled`, paragraphs: [hello(m), `The visit on ${s(m.data.dayWords)} at ${s(m.data.start)} is cancelled. ${s(m.data.why)}`, phone(m)] }),
  ownerLink: (m) => ({ subject: `${s(m.data.dog)}: your page`, paragraphs: [hello(m), 'Here is a new link to your page. It shows where everything stands, and what we still need from you. Earlier links no longer work.', page(m), phone(m)] }),
  goingHome: (m) => ({ subject: `${s(m.data.dog)} goes home: please read`, paragraphs: [hello(m), 'The sheet for tonight is attached: what is to be expected, and when to call at once.', ...notTaken(m), `The number that answers now: ${s(m.data.call)}.`] }),
  result: (m) => ({
    subject: `${s(m.data.dog)}: a letter from ${m.practice?.name ?? 'the practice'}`,
    paragraphs: [hello(m), 'A letter about the pictures is attached. It says what was read, how sure that is, and what it cannot tell. Please read it in quiet, and call us with any question.', page(m), phone(m)],
  }),
  correction: (m) => ({ subject: `${s(m.data.dog)}: a correction`, paragraphs: [hello(m), 'An earlier letter was not right. The attached letter says what holds now. We are sorry for the trouble.', page(m), phone(m)] }),
  filmsRejected: (m) => ({ subject: `${s(m.data.dog)}: some pictures again`, paragraphs: [hello(m), 'Some pictures could not be read by the centre. The attached letter says which, and what comes next. It is nobody’s fault.', page(m), phone(m)] }),
  package: (m) => ({
    subject: `Package ${s(m.data.number)} to read`,
    paragraphs: [`Dear colleagues at ${m.toName},`, `A package is ready: ${s(m.data.number)}, ${s(m.data.study)}, ${s(m.data.films)} films.`, `Open it, and please say that you have it: ${m.readerLink ?? ''}`, 'The link opens this package alone and runs out after 60 days; you can also sign in.', `Manifest (SHA-256): ${s(m.data.manifest)}`],
  }),
  secondReading: (m) => ({
    subject: `Second reading of package ${s(m.data.number)}`,
    paragraphs: [`Dear colleagues at ${m.toName},`, `The owner asks for a second reading of ${s(m.data.number)}, ${s(m.data.study)}, ${s(m.data.films)} films. Please let another reader see the same films, without the first reading. What the second reader finds will stand, whichever way it goes; that was said beforehand.`, `The package: ${m.readerLink ?? ''}`, `Manifest (SHA-256): ${s(m.data.manifest)}`],
  }),
  incident: (m) => ({ subject: `Order ${s(m.data.accession)}: an incident is open`, paragraphs: [hello(m), s(m.data.words), 'It stays open until you write down what was found and what was changed. Please open the order.'] }),
  chase: (m) => ({
    subject: `Packages we are waiting for: ${list(m.data.lines).length}`,
    paragraphs: [`Dear colleagues at ${m.toName},`, 'For these packages we have no word yet:', ...list(m.data.lines), 'If one is lost, unpaid or cannot be read, please tell us: sign in, or answer by phone. This is the only reminder today.'],
  }),
  escalation: (m) => ({
    subject: `Order ${s(m.data.accession)}: the reading centre does not answer`,
    paragraphs: [hello(m), `${s(m.data.study)} of order ${s(m.data.accession)} was due ${s(m.data.due)} at ${s(m.data.centre)}: ${s(m.data.clock)}. ${s(m.data.cause)}`, 'This is now with you. Please open the order, take it over, and say when to look again.'],
  }),
  join: (m) => ({
    subject: `${s(m.data.name)} is to read films for ${m.toName}`,
    paragraphs: [`Dear colleagues at ${m.toName},`, `${m.practice?.name ?? 'A practice'} has entered ${s(m.data.name)} (${s(m.data.email)}) as a reader of your centre. If that is right, ${s(m.data.name)} chooses a password here and can then sign in: ${m.joinLink ?? ''}`, 'If it is not, leave this mail alone: without the password nobody can sign in. The link runs out after 14 days.'],
  }),
  joinPractice: (m) => ({
    subject: `${m.toName} joins the screening scheme`,
    paragraphs: [`Dear colleagues at ${m.toName},`, `${s(m.data.lead)}, who leads the scheme, has entered your practice, with ${s(m.data.name)} (${s(m.data.email)}) as its manager. ${s(m.data.name)} chooses a password here and can then set up rooms, people and texts: ${m.joinLink ?? ''}`, 'The link runs out after 14 days.'],
  }),
  referral: (m) => ({ subject: `Referral ${s(m.data.accession)}`, paragraphs: [`Dear colleagues at ${m.toName},`, `${m.practice?.name ?? ''} asks you to take the pictures for order ${s(m.data.accession)}: ${list(m.data.studies).join(', ')}. The owner has agreed that the record is shared. Please accept or decline by ${s(m.data.expires)}; you see the order under Orders.`] }),
  referralAnswered: (m) => ({ subject: `Referral ${s(m.data.accession)}: ${s(m.data.answer)}`, paragraphs: [`Dear colleagues at ${m.toName},`, `The referral of order ${s(m.data.accession)} was ${s(m.data.answer)} by ${s(m.data.from)}. ${s(m.data.why)}`, 'You see the order under Orders.'] }),
  referralExpired: (m) => ({ subject: `Referral ${s(m.data.accession)}: no answer`, paragraphs: [`Dear colleagues at ${m.toName},`, `${s(m.data.to)} has not answered the referral of order ${s(m.data.accession)} by ${s(m.data.expires)}. Please take it back, and ask another practice or the owner.`] }),
  referralResult: (m) => ({ subject: `Order ${s(m.data.accession)}: the letter has been released`, paragraphs: [`Dear colleagues at ${m.toName},`, `${s(m.data.from)} has released the letter of order ${s(m.data.accession)}, which your practice shares. You read it on the order’s page.`] }),
  transferSeller: (m) => ({ subject: `${s(m.data.dog)}: a new owner`, paragraphs: [hello(m), `We have written down that ${s(m.data.dog)} has a new owner since ${s(m.data.day)}. May the new owner see what comes of the pictures? Please say so on your page. Nothing about you is shown to them.`, page(m), phone(m)] }),
  transferBuyer: (m) => ({ subject: `${s(m.data.dog)}: your page`, paragraphs: [hello(m), `You are ${s(m.data.dog)}’s owner since ${s(m.data.day)}. Pictures were asked for before that. If you and the earlier owner both agree, you see what comes of them. Please say so on your page.`, page(m), phone(m)] }),
  handedOver: (m) => ({ subject: `Order ${s(m.data.accession)} is now yours`, paragraphs: [`Dear colleagues at ${m.toName},`, `${s(m.data.from)} is closing and has handed order ${s(m.data.accession)} over to you, with the owner’s yes. You find it, the dog and its people in your register; what waits for somebody stands on the order’s page.`] }),
  newPractice: (m) => ({ subject: `${s(m.data.dog)}: ${s(m.data.practice)} looks after you now`, paragraphs: [hello(m), `As agreed with you, ${s(m.data.practice)} has taken over everything about ${s(m.data.dog)} from us. Your page shows how to reach them.`, page(m)] }),
  centreClosed: (m) => ({ subject: `${s(m.data.dog)}: the reading centre has closed`, paragraphs: [hello(m), `${s(m.data.centre)}, which was to read ${s(m.data.dog)}’s pictures, has closed. No picture is lost. We will ask you which centre may read them instead.`, page(m), phone(m)] }),
} satisfies Record<string, Template>;

export type TemplateName = keyof typeof templates;

export function renderMail(name: string, mail: MailData): MailText {
  const template: Template | undefined = Object.hasOwn(templates, name) ? templates[name as TemplateName] : undefined;
  if (!template) throw new Error(`No mail is written from "${name}".`);
  const { subject, paragraphs } = template(mail);
  return { subject, paragraphs: paragraphs.filter(Boolean) };
}
