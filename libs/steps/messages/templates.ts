import { inAList } from '#libs/contracts/in-a-list';
import { list, s, type MailData, type MailText, type Template } from './mail-data.js';
import { ownerMails } from './owner-mails.js';

const phone = (m: MailData) => (m.practice ? `Questions? Call ${m.practice.name}: ${m.practice.phone}.` : '');
const hello = (m: MailData) => `Dear ${m.toName},`;

/** What practices, centres and the scheme's people are written, in English. */
const staffMails = {
  package: (m) => ({
    subject: `Package ${s(m.data.number)} to read`,
    paragraphs: [`Dear colleagues at ${m.toName},`, `A package is ready: ${s(m.data.number)}, ${s(m.data.study)}, ${s(m.data.films)} films.`, `Open it, and please say that you have it: ${m.readerLink ?? ''}`, 'The link opens this package alone and runs out after 60 days; you can also sign in.', `Manifest (SHA-256): ${s(m.data.manifest)}`],
  }),
  secondReading: (m) => ({
    subject: `Second reading of package ${s(m.data.number)}`,
    paragraphs: [`Dear colleagues at ${m.toName},`, `The owner asks for a second reading of ${s(m.data.number)}, ${s(m.data.study)}, ${s(m.data.films)} films. Please let another reader see the same films, without the first reading. What the second reader finds will stand, whichever way it goes; that was said beforehand.`, `The package: ${m.readerLink ?? ''}`, `Manifest (SHA-256): ${s(m.data.manifest)}`],
  }),
  whichStands: (m) => ({
    subject: `Two readings of package ${s(m.data.number)} that differ`,
    paragraphs: [`Dear colleagues at ${m.toName},`, `For package ${s(m.data.number)}, ${s(m.data.study)}, two readings came to us that do not say the same:`, ...list(m.data.readings), 'Which of them stands? Please answer in writing to the address below, and name who says so. Until then neither is told to anybody.', phone(m)],
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
  referral: (m) => ({ subject: `Referral ${s(m.data.accession)}`, paragraphs: [`Dear colleagues at ${m.toName},`, `${m.practice?.name ?? ''} asks you to take the pictures for order ${s(m.data.accession)}: ${inAList(list(m.data.studies))}. The owner has agreed that the record is shared. Please accept or decline by ${s(m.data.expires)}; you see the order under Orders.`] }),
  referralAnswered: (m) => ({ subject: `Referral ${s(m.data.accession)}: ${s(m.data.answer)}`, paragraphs: [`Dear colleagues at ${m.toName},`, `The referral of order ${s(m.data.accession)} was ${s(m.data.answer)} by ${s(m.data.from)}. ${s(m.data.why)}`, 'You see the order under Orders.'] }),
  referralExpired: (m) => ({ subject: `Referral ${s(m.data.accession)}: no answer`, paragraphs: [`Dear colleagues at ${m.toName},`, `${s(m.data.to)} has not answered the referral of order ${s(m.data.accession)} by ${s(m.data.expires)}. Please take it back, and ask another practice or the owner.`] }),
  referralResult: (m) => ({ subject: `Order ${s(m.data.accession)}: the letter has been released`, paragraphs: [`Dear colleagues at ${m.toName},`, `${s(m.data.from)} has released the letter of order ${s(m.data.accession)}, which your practice shares. You read it on the order’s page.`] }),
  lookAhead: (m) => ({
    subject: `${s(m.data.dog)} on ${s(m.data.dayWords)}: something has changed`,
    paragraphs: [`Dear colleagues at ${m.toName},`, `Order ${s(m.data.accession)} was in order when ${s(m.data.dog)} was booked for ${s(m.data.dayWords)}. Tonight’s look at the visits to come found that it no longer is:`, ...list(m.data.holds), 'The order’s page offers the ways out. Nobody else has been told.'],
  }),
  handedOver: (m) => ({ subject: `Order ${s(m.data.accession)} is now yours`, paragraphs: [`Dear colleagues at ${m.toName},`, `${s(m.data.from)} is closing and has handed order ${s(m.data.accession)} over to you, with the owner’s yes. You find it, the dog and its people in your register; what waits for somebody stands on the order’s page.`] }),
} satisfies Record<string, Template>;

const templates = { ...ownerMails, ...staffMails };

export type TemplateName = keyof typeof templates;

export function renderMail(name: string, mail: MailData): MailText {
  const template: Template | undefined = Object.hasOwn(templates, name) ? templates[name as TemplateName] : undefined;
  if (!template) throw new Error(`No mail is written from "${name}".`);
  const { subject, paragraphs } = template(mail);
  return { subject, paragraphs: paragraphs.filter(Boolean) };
}
