import type { ReferralLetterSnapshot } from './referral-letter.js';
import { certificate, laxity, elbows, extendedHips, practice, statement } from './samples.js';
import type { CertificateSnapshot, JointOnPaper, StudyOnPaper } from './snapshots.js';

/** Invented dogs and people on German papers, with the words that the studies say in German, the long ones. For tests only. */

const read = (joint: JointOnPaper['joint'], side: JointOnPaper['side'], value: string, also: string[], flags: string[] = []): JointOnPaper => ({ joint, side, finding: { kind: 'value', value, unit: '', words: '', also, flags, secondLook: null } });
const unread = (joint: JointOnPaper['joint'], side: JointOnPaper['side'], reason: string): JointOnPaper => ({ joint, side, finding: { kind: 'none', code: 'ROTATION', reason } });

const german = { centre: 'die Auswertungsstelle in Threnfold', reader: 'einer Fachperson der Stelle', imagedOn: '2026-10-09', readOn: '2026-10-28' };

const lockerheit: StudyOnPaper = {
  ...laxity, ...german, title: 'Hüften, Lockerheit', protocol: 'Lockerheit der Hüfte, Röntgen unter Belastung',
  joints: [
    read('hip', 'left', '0,38', []),
    read('hip', 'right', '0,44', [], ['Es wurden Zeichen von Arthrose gesehen. Der Wert bleibt; er wird nicht mit anderen Hunden verglichen.']),
  ],
  dogResult: '0,44 (rechts, die lockerere Hüfte)',
};
const gestreckt: StudyOnPaper = {
  ...extendedHips, ...german, title: 'Hüften, gestreckt', protocol: 'Beurteilung der Hüfte auf dem gestreckten Bild', criteria: 'Kriterien von 2022',
  joints: [
    read('hip', 'left', 'Grad B', ['Norberg-Winkel 103°']),
    unread('hip', 'right', 'nicht beurteilbar: der Hund lag verdreht, darum konnte das Gelenk nicht beurteilt werden'),
  ],
  dogResult: 'mindestens Grad B (links; die rechte Hüfte konnte nicht beurteilt werden)',
};
const ellbogen: StudyOnPaper = {
  ...elbows, ...german, title: 'Ellbogen', protocol: 'Beurteilung der Ellbogen', viewsMissing: [],
  joints: [
    read('elbow', 'left', 'Grad 0', ['Ursprüngliche Veränderung: keine gesehen']),
    read('elbow', 'right', 'Grad 1', ['Ursprüngliche Veränderung: vermutet', 'Knochenzacken, die größte: unter 2 mm', 'Dichterer Knochen am Kronfortsatz: etwas, das feine Muster des Knochens ist noch zu sehen']),
  ],
  dogResult: 'Grad 1 (rechts, der schlechtere Ellbogen)',
};

const inGerman = { lang: 'de', earlierOperation: 'nicht bekannt, laut Besitzerin/Besitzer', signed: { by: german.reader, on: '2026-10-29' } } as const;

export const bescheinigung: CertificateSnapshot = { ...certificate, ...inGerman, studies: [ellbogen, gestreckt] };

export const mitteilung: CertificateSnapshot = {
  ...statement, ...inGerman,
  dog: { ...statement.dog, breed: 'Threnfolder Schäferhund, langhaarige Varietät vom Oberlauf der Aldra' },
  identifiedBy: 'wie im Auftrag steht',
  studies: [lockerheit, ellbogen, gestreckt],
};

export const referralLetter: ReferralLetterSnapshot = {
  templateVersion: 1,
  paper: 'A4',
  lang: 'en',
  issuedAt: '2026-11-24T11:20:00+01:00',
  practice,
  to: { name: 'Hillfoot Veterinary Practice', place: 'Karsby' },
  orderNumber: 'AR26-00417-9',
  dog: mitteilung.dog,
  studies: [
    { title: 'Hip laxity by stress radiography', version: '4', views: ['Extended, from below', 'Compression, from below', 'Distraction, from below'], centre: 'Reading centre, Threnfold' },
    { title: 'Elbow grading', version: '2', views: ['Elbow, left, bent, from the side', 'Elbow, right, bent, from the side'], centre: '' },
  ],
  health: [['In season now, or due in the next weeks?', 'no'], ['Any medicine, drops or tablets now?', 'not known']],
  expires: '2026-12-01',
  contact: { name: 'Ruan Tiedt', phone: '0470 21 00' },
};

export const ueberweisung: ReferralLetterSnapshot = {
  ...referralLetter,
  lang: 'de',
  studies: [
    { title: 'Lockerheit der Hüfte, Röntgen unter Belastung', version: '4', views: ['Gestreckt, von unten', 'Zusammengedrückt, von unten', 'Auseinandergedrückt, von unten'], centre: 'Reading centre, Threnfold' },
    { title: 'Beurteilung der Ellbogen', version: '2', views: ['Ellbogen, links, gebeugt, von der Seite', 'Ellbogen, rechts, gebeugt, von der Seite'], centre: '' },
  ],
  health: [['Jetzt läufig, oder in den nächsten Wochen?', 'nein'], ['In den letzten zwei Wochen krank, mit Husten oder ohne Appetit?', 'nein'], ['Zurzeit Medikamente, Tropfen oder Tabletten?', 'nicht bekannt']],
};
