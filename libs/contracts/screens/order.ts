import { z } from 'zod';
import { findingField, id, localDay } from '../common.js';
import { channelKinds } from '../dispatch.js';
import { dog } from '../register.js';
import { standingView } from '../standing.js';
import { frozenView } from './frozen.js';

const scope = z.enum(['order', 'visit', 'study']);

export const wordedHold = z.object({
  code: z.string(),
  on: z.object({ scope, id: z.string() }),
  title: z.string(),
  rest: z.string(),
  who: z.array(z.string()),
  by: z.string().nullable(),
  until: z.string().nullable(),
  forbids: z.array(z.string()),
  ways: z.array(z.string()),
  /** This person can do one of the ways now. */
  yours: z.boolean(),
});
export type WordedHold = z.infer<typeof wordedHold>;

export const nextAction = z.object({
  action: z.string(),
  label: z.string(),
  on: z.object({ scope, id: z.string() }),
  allowed: z.boolean(),
  /** This person's role does it. */
  yours: z.boolean(),
  because: z.array(z.string()),
});
export type NextAction = z.infer<typeof nextAction>;

export const knot = z.object({ step: z.string(), name: z.string(), state: z.enum(['done', 'here', 'toCome', 'sentBack', 'ended', 'held']), at: z.string().nullable(), note: z.string().nullable(), retakes: z.int() });
export const road = z.object({
  id: z.string(),
  label: z.string(),
  sub: z.string(),
  /** For a study: the visit it leaves from, when it has been there. */
  from: z.string().nullable(),
  knots: z.array(knot),
  hold: z.object({ title: z.string(), rest: z.string() }).nullable(),
  over: z.boolean(),
  ended: z.string().nullable(),
  dashed: z.boolean(),
  sentence: z.string(),
});
export type Road = z.infer<typeof road>;
export const threadScreen = z.object({ visits: z.array(road), studies: z.array(road) });
export type ThreadScreen = z.infer<typeof threadScreen>;

const choice = z.object({ id: z.string(), name: z.string(), hint: z.string().optional() });
export type Choice = z.infer<typeof choice>;

export const exposureView = z.object({
  id,
  visit: id,
  view: z.string(),
  viewName: z.string(),
  attempt: z.int(),
  at: z.string(),
  image: z.string(),
  previewable: z.boolean(),
  serves: z.array(z.string()),
  verdicts: z.array(z.object({ study: id, verdict: z.enum(['accept', 'retake']), reasons: z.array(z.string()) })),
  disowned: z.boolean(),
  people: z.array(z.string()),
  technique: z.record(z.string(), z.unknown()),
  marker: z.string().nullable(),
  kind: z.enum(['dicom', 'png', 'jpeg']).nullable(),
  /** Of a PNG or JPEG: how large its pixels are and which way it lies, as was said of it, and for which detector. */
  stated: z.object({ pixelMm: z.number(), right: z.string(), lower: z.string(), detector: z.string() }).nullable(),
  /** It is in a package, and nothing is said of it any more. */
  sealed: z.boolean(),
  /** Size in pixels, and how large the file says they are, or as was said; to set points on it. */
  picture: z.object({ width: z.int(), height: z.int(), spacing: z.object({ row: z.number(), column: z.number() }).optional() }).nullable(),
  /** What the file says of itself: the machine's exposure against its own target, and which way up the picture is. Nobody has checked it. */
  said: z.object({
    exposure: z.object({ index: z.number(), target: z.number().nullable(), deviation: z.number().nullable(), percent: z.int().nullable(), fits: z.boolean() }).nullable(),
    orientation: z.object({ right: z.string(), foot: z.string(), asOfPeople: z.boolean() }).nullable(),
  }),
  /** When points were set on it in the room, and by whom; never which or what they give. */
  marked: z.array(z.object({ at: z.string(), by: z.string() })),
});

export const visitView = z.object({
  id,
  step: z.string(),
  stepLabel: z.string(),
  day: localDay.nullable(),
  start: z.string().nullable(),
  where: z.string().nullable(),
  room: z.string().nullable(),
  operator: z.string().nullable(),
  nurse: z.string().nullable(),
  vet: z.string().nullable(),
  studies: z.array(id),
  estimate: z.object({ lines: z.array(z.object({ words: z.string(), amountMinor: z.int() })), totalMinor: z.int(), currency: z.string(), accepted: z.string().nullable() }).nullable(),
  answers: z.array(z.object({ question: z.string(), words: z.string(), answer: z.string(), note: z.string().nullable() })),
  consent: z.object({ answer: z.string(), signer: z.string(), at: z.string(), emergency: z.record(z.string(), z.unknown()).nullable() }).nullable(),
  admitted: z.object({ weightKg: z.number(), bodyCondition: z.number(), fastedHours: z.number(), at: z.string() }).nullable(),
  scans: z.array(z.object({ place: z.string(), numbers: z.array(z.string()), matches: z.boolean(), at: z.string(), by: z.string() })),
  examined: z.object({ statusClass: z.int(), reason: z.string().nullable(), findings: z.string().nullable(), by: z.string(), at: z.string() }).nullable(),
  plans: z.array(z.object({ id, kind: z.string(), by: z.string(), at: z.string(), weightKg: z.number(), used: z.boolean(), lines: z.array(z.object({ words: z.string(), steps: z.array(z.string()) })) })),
  asleepSince: z.string().nullable(),
  /** `waits` is set by a tablet alone: kept there, and not yet stored. */
  readings: z.array(z.object({ at: z.string(), by: z.string(), values: z.record(z.string(), z.unknown()), waits: z.boolean().optional() })),
  drugs: z.array(z.object({ at: z.string(), by: z.string(), event: z.string(), words: z.string(), batch: z.string() })),
  events: z.array(z.object({ at: z.string(), by: z.string(), what: z.string() })),
  recovery: z.object({ signs: z.array(z.string()), by: z.string(), at: z.string() }).nullable(),
  sheet: z.object({ to: z.string(), by: z.string(), at: z.string(), document: z.string() }).nullable(),
});
export type VisitView = z.infer<typeof visitView>;

export const resultView = z.object({
  id,
  ref: z.string(),
  channel: z.string(),
  reading: z.string(),
  at: z.string(),
  by: z.string(),
  joints: z.array(z.object({ joint: z.string(), name: z.string(), words: z.string(), flags: z.array(z.string()) })),
  dog: z.string(),
  comment: z.string().nullable(),
  readOn: z.string().nullable(),
  /** The sheet that came by post, and who has keyed it. */
  scan: z.string().nullable(),
  keyedBy: z.array(z.string()),
  state: z.enum(['waiting', 'accepted', 'refused', 'withdrawn', 'superseded', 'copy']),
  problems: z.array(z.string()),
  /** How it stands against what was measured in the room; for a vet, once the films are sealed. */
  room: z.string().nullable(),
});

/** How far the films of one sending are, where the channel hands them over one by one. */
export const delivery = z.object({
  channel: z.enum(channelKinds),
  /** open, stopped, arrived, refused, ended */
  state: z.string(),
  words: z.string().nullable(),
  films: z.array(z.object({ name: z.string(), state: z.string(), words: z.string().nullable() })),
  /** What the archive was told of films that are not to be used any more. */
  notes: z.array(z.object({
    id, words: z.string(), reasons: z.array(z.string()), films: z.int(), state: z.string(),
    /** What the archive said, or why it could not be told. */
    says: z.string().nullable(),
    /** By a person, in another way. */
    told: z.object({ at: z.string(), by: z.string(), how: z.enum(['phone', 'mail']), whom: z.string() }).nullable(),
  })),
});
export type DeliveryView = z.infer<typeof delivery>;

export const studyView = z.object({
  id,
  step: z.string(),
  stepLabel: z.string(),
  protocol: z.string(),
  version: z.string(),
  name: z.string(),
  centre: z.object({ id, name: z.string() }),
  views: z.array(z.object({ view: z.string(), name: z.string(), required: z.boolean(), accepted: z.boolean(), checklist: z.array(z.string()) })),
  joints: z.array(z.object({ joint: z.string(), name: z.string() })),
  value: z.object({ kind: z.enum(['number', 'grade']), unit: z.string(), min: z.number().nullable(), max: z.number().nullable(), decimals: z.int(), grades: z.array(z.string()) }),
  noValueReasons: z.array(z.object({ code: z.string(), words: z.string() })),
  findings: z.array(findingField),
  consent: z.object({ study: z.string().nullable(), sendAll: z.string().nullable() }),
  packages: z.array(z.object({ id, sealedAt: z.string(), films: z.int(), manifest: z.string() })),
  sends: z.array(z.object({ id, at: z.string(), centre: z.string(), outcome: z.string(), acknowledged: z.boolean(), delivery: delivery.nullable() })),
  chase: z.object({ clock: z.string(), dueDay: z.string(), overdue: z.boolean(), act: z.string(), reminders: z.int(), cause: z.string().nullable() }).nullable(),
  results: z.array(resultView),
  /** Readings that disagree, and what can be told of them; nothing is released meanwhile. */
  conflict: z.object({ results: z.array(id), differs: z.array(z.string()), told: z.array(z.string()), asked: z.array(z.object({ at: z.string(), by: z.string() })) }).nullable(),
  /** An earlier accepted reading of this dog by the same protocol, and whether the two differ by more than the reading's error. */
  earlier: z.object({ order: id, accession: z.string(), readOn: z.string(), joints: z.array(z.object({ name: z.string(), words: z.string() })), dog: z.string(), changes: z.array(z.string()), counts: z.string() }).nullable(),
  /** What the centre sent back; the films stay with it. */
  rejections: z.array(z.object({ at: z.string(), by: z.string(), package: z.string(), views: z.array(z.string()), reasons: z.array(z.string()), exposures: z.array(id) })),
  letters: z.array(z.object({ id, kind: z.string(), at: z.string(), outcomes: z.array(z.object({ to: z.string(), toName: z.string(), outcome: z.string() })) })),
  phoneFirst: z.string().nullable(),
  /** Where the dog stands among its breed, as the last letter gave it. */
  standing: standingView.nullable(),
});
export type StudyView = z.infer<typeof studyView>;

/** An image that the X-ray machine sent to this order and that is no film of it before a person has named its view. */
export const arrivedImage = z.object({ image: z.string(), at: z.string(), from: z.string(), previewable: z.boolean(), imageDay: localDay.nullable(), patientId: z.string().nullable(), otherDog: z.boolean(), says: z.string(), width: z.int(), height: z.int() });
export type ArrivedImage = z.infer<typeof arrivedImage>;

/** What the X-ray machine says of its own work; nothing of it was checked. Times are those of its own clock. */
export const performedStep = z.object({
  id: z.string(), from: z.string(), at: z.string(), state: z.enum(['inProgress', 'completed', 'discontinued']),
  started: z.string().nullable(), ended: z.string().nullable(), what: z.string().nullable(), reason: z.string().nullable(),
  exposures: z.number().nullable(),
  /** dGy·cm² */
  areaDose: z.number().nullable(),
  /** mGy */
  entranceDose: z.number().nullable(),
  distanceCm: z.number().nullable(),
  each: z.array(z.object({ kv: z.number().optional(), mas: z.number().optional() })),
  /** How many images it names, how many of those came, and which films they are. */
  images: z.int(), here: z.int(), films: z.array(z.string()),
  patientId: z.string().nullable(), otherDog: z.boolean(),
});
export type PerformedStep = z.infer<typeof performedStep>;

export const orderScreen = z.object({
  id,
  accession: z.string(),
  version: z.int(),
  step: z.string(),
  stepLabel: z.string(),
  now: z.string(),
  practice: z.object({ id, name: z.string(), phone: z.string(), zone: z.string() }),
  dog,
  payer: z.string().nullable(),
  addressees: z.array(z.object({ person: z.string(), name: z.string(), channel: z.string() })),
  statistics: z.boolean(),
  frozen: z.boolean(),
  silent: z.boolean(),
  calm: frozenView.nullable(),
  thread: threadScreen,
  holds: z.array(wordedHold),
  next: z.array(nextAction),
  visits: z.array(visitView),
  studies: z.array(studyView),
  exposures: z.array(exposureView),
  arrived: z.array(arrivedImage),
  performed: z.array(performedStep),
  documents: z.array(z.object({ id, kind: z.string(), name: z.string(), at: z.string(), serial: z.string().nullable(), state: z.string() })),
  messages: z.array(z.object({ id, kind: z.string(), to: z.string(), subject: z.string(), state: z.string(), detail: z.string().nullable(), at: z.string() })),
  problems: z.array(z.object({ id, job: z.string(), words: z.string(), at: z.string() })),
  incidents: z.array(z.object({ id, kind: z.string(), what: z.string(), openedAt: z.string(), openedBy: z.string(), closedAt: z.string().nullable(), closedBy: z.string().nullable(), words: z.string().nullable() })),
  happened: z.array(z.object({ at: z.string(), what: z.string(), by: z.string(), late: z.boolean() })),
  choices: z.record(z.string(), z.array(choice)),
});
export type OrderScreen = z.infer<typeof orderScreen>;

export const orderRow = z.object({ id, accession: z.string(), dog: z.string(), breed: z.string(), owner: z.string(), step: z.string(), stepLabel: z.string(), hold: z.string().nullable(), studies: z.array(z.string()), day: localDay.nullable(), overdue: z.boolean() });
export type OrderRow = z.infer<typeof orderRow>;
export const orderList = z.object({ rows: z.array(orderRow), more: z.boolean() });

/** What an upload answers; the picture is stored, and no fact is written until takeView names it. */
export const uploaded = z.object({ image: z.string(), kind: z.enum(['dicom', 'png', 'jpeg']), width: z.int(), height: z.int(), size: z.int(), imageDay: localDay.nullable(), patientId: z.string().nullable(), warnings: z.array(z.string()), previewable: z.boolean() });
export type Uploaded = z.infer<typeof uploaded>;
