import { z } from 'zod';
import { languageCodes } from '#libs/words/languages';
import { email, id, name, password, phone, role } from './common.js';

export const signIn = z.object({ email, password: z.string().min(1).max(200) });
export type SignIn = z.infer<typeof signIn>;

/** Who is using the page. A link opens one order (owner) or one package (reader) and nothing else. */
export const me = z.object({
  kind: z.enum(['staff', 'reader', 'lead', 'ownerLink', 'readerLink']),
  id: id.nullable(),
  name: z.string(),
  roles: z.array(role),
  home: z.object({ id, name: z.string(), place: z.string() }).nullable(),
  zone: z.string(),
  csrf: z.string(),
  demo: z.boolean(),
  /** In which the pages and all answers are: the person's own choice, else what was chosen in the browser or what it asks for. */
  language: z.enum(languageCodes),
  /** Mail is caught instead of sent, and this person may look at it. */
  mailbox: z.boolean(),
});
export type Me = z.infer<typeof me>;

export const chooseLanguage = z.object({ language: z.enum(languageCodes) });
export type ChooseLanguage = z.infer<typeof chooseLanguage>;

/** The owner's or reader's emailed link, exchanged once for a narrow session; a POST, so that mail scanners open nothing. */
export const openLink = z.object({ token: z.string().min(20).max(100) });


/** A reader's first visit: the link that the centre was mailed, and a password of their own. */
export const join = z.object({ token: z.string().min(20).max(100), password });

/** First page of an empty installation. */
export const firstRun = z.object({
  scheme: z.object({ name, country: name, currency: z.string().length(3).toUpperCase(), zone: z.string().min(1).max(60) }),
  practice: z.object({ name, address: name, phone, email }),
  manager: z.object({ name, email, password }),
});
export type FirstRun = z.infer<typeof firstRun>;

/** A practice that joins; its letters open its order numbers. */
export const newPractice = z.object({
  name,
  place: name,
  address: name,
  phone,
  email,
  letters: z.string().trim().toUpperCase().regex(/^[A-HJ-NP-Z]{2}$/, 'Two letters, not I or O.'),
  managerName: name,
  managerEmail: email,
});
export type NewPractice = z.infer<typeof newPractice>;

/** Only the demo has these. */
export const demoSignIns = z.array(z.object({ name: z.string(), roles: z.array(role), home: z.string(), email, password: z.string() }));
export type DemoSignIns = z.infer<typeof demoSignIns>;
