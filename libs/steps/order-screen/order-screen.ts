import type { OrderScreen } from '#libs/contracts/screens/order';
import { evaluate } from '#libs/pathway/evaluate';
import { findProtocol } from '#libs/science/protocols/catalogue';
import { dogOfRow } from '#libs/register/dog-of-row';
import { frozenView } from '../frozen/frozen-view.js';
import { saidOfFilm } from '#libs/dicom/said-of-film';
import { stepName } from '#libs/register/spoken-names';
import { t } from '#libs/words/spoken';
import { sayStored } from '#libs/words/stored';
import { documentName } from '../report/document-name.js';
import { filmsOf } from '../dispatch/films-of.js';
import { servedBy } from '../imaging/film-of.js';
import { pictureOf } from '../imaging/picture-of.js';
import { sizeOfFilm } from '../imaging/stated-size.js';
import { withRules } from '../record/order-record.js';
import type { Work } from '../record/work.js';
import { incidentWords } from '../incident/open-incident.js';
import { choicesOf } from './choices.js';
import { happened } from './happened.js';
import { nextActions, wordedHolds } from './holds-and-next.js';
import { namesOf } from './names.js';
import type { ScreenSource, Viewer } from './screen-source.js';
import { performedView } from './performed-view.js';
import { studyView } from './study-view.js';
import { threadScreen } from './thread-screen.js';
import { visitView } from './visit-view.js';

/** The order's page: a pure function of what the database gave, the person who looks, and the time. */
export function orderScreen(source: ScreenSource, viewer: Viewer, now: Date): OrderScreen {
  const order = withRules(source.record);
  const evaluation = evaluate(order.facts, now.toISOString(), order.rules);
  const facts: Work['facts'] = (type) => order.facts.filter((f): f is never => f.type === type);
  const work = { order, evaluation, facts, now };
  const names = namesOf(source, work);
  const practice = order.practices[order.practice]!;
  const naming = { names, zone: practice.zone };
  const rooms = viewer.roles.includes('vet') ? source.marks : [];
  const films = exposures(work, source, names);
  const next = nextActions(evaluation, viewer, order.practice);
  const addressees = [...facts('orderOpened'), ...facts('addresseesConfirmed')].at(-1)?.addressees ?? [];
  return {
    id: order.id,
    accession: order.accession,
    version: order.version,
    step: evaluation.order.step,
    stepLabel: stepName(evaluation.order.step),
    now: now.toISOString(),
    practice: { id: order.practice, name: practice.name, phone: practice.phone, zone: practice.zone },
    dog: dogOfRow(source.dog),
    payer: (facts('payerNamed').at(-1)?.detail?.name as string | undefined) ?? null,
    addressees: addressees.map((a) => ({ ...a, name: names[a.person] ?? 'somebody no longer in the register' })),
    statistics: evaluation.order.statistics,
    frozen: evaluation.order.frozen,
    silent: evaluation.order.silent,
    calm: frozenView(work, names),
    thread: threadScreen(work, naming),
    holds: wordedHolds(evaluation, viewer, naming, next),
    next,
    visits: Object.keys(evaluation.visits).map((id) => visitView(work, id, source.prices)),
    studies: Object.keys(evaluation.studies).filter((id) => findProtocol(evaluation.studies[id]!.protocol, evaluation.studies[id]!.version)).map((id) => studyView(work, id, names, source, dogOfRow(source.dog), rooms)),
    exposures: films,
    arrived: arrived(work, source),
    performed: performedView(source, films),
    documents: source.documents.map(({ named, ...paper }) => ({ ...paper, name: documentName({ ...paper, named }, t) })),
    messages: source.messages,
    problems: source.problems.map(({ id, job, at, ...told }) => ({ id, job, at, words: sayStored(told, t) })),
    incidents: source.incidents.map((i) => ({ ...i, what: incidentWords[i.kind] })),
    happened: happened(order.facts, evaluation.order.late, names),
    choices: choicesOf(source, work, names),
  };
}

type Seen = Pick<Work, 'facts' | 'evaluation' | 'order' | 'now'>;

function exposures(work: Seen, source: ScreenSource, names: Record<string, string>): OrderScreen['exposures'] {
  const disowned = new Set(work.facts('exposureDisowned').map((f) => f.exposure));
  const attempts = new Map(Object.keys(work.evaluation.studies).flatMap((s) => filmsOf(work as Work, s)).map((f) => [f.exposure, f.attempt]));
  const sealed = new Set(work.facts('packageSealed').flatMap((f) => f.exposures));
  return work.facts('exposureTaken').map((f) => ({
    id: f.exposure, visit: f.visit, view: f.view, viewName: names[f.view] ?? f.view, attempt: attempts.get(f.exposure) ?? 1, at: f.at, image: f.image,
    previewable: source.images.some((i) => i.sha === f.image && i.preview !== null),
    serves: servedBy(work, f.exposure),
    verdicts: lastVerdicts(work, f.exposure),
    disowned: disowned.has(f.exposure),
    people: (work.facts('roomLogged').filter((r) => r.exposure === f.exposure).at(-1)?.detail?.names ?? f.detail?.names ?? []) as string[],
    technique: (f.detail?.technique ?? {}) as Record<string, unknown>,
    marker: (f.detail?.marker as string | undefined) ?? null,
    kind: source.images.find((i) => i.sha === f.image)?.kind ?? null,
    stated: statedOf(work, f.exposure),
    sealed: sealed.has(f.exposure),
    picture: pictureIn(source, f.image, sizeOfFilm(work, f.exposure)),
    said: saidOfFilm(source.images.find((i) => i.sha === f.image)?.said ?? {}),
    marked: work.order.facts.filter((m) => m.type === 'filmMarked' && m.exposure === f.exposure).map((m) => ({ at: m.at, by: m.byName })),
  }));
}

/** What came from the machine and is no film yet, because nobody has said which view it is. */
function arrived({ facts }: Seen, source: ScreenSource): OrderScreen['arrived'] {
  const named = new Set(facts('exposureTaken').map((f) => f.image));
  const known = new Set([source.dog.animalId, ...source.dog.identifiers.map((i) => i.value), ...source.dog.merged.map((m) => m.animalId)]);
  return source.arrived.filter(({ image }) => !named.has(image)).map(({ said, patientId, ...row }) => ({
    ...row, patientId, otherDog: patientId !== null && !known.has(patientId), says: [said.viewPosition, said.laterality, ...(said.procedures ?? [])].filter(Boolean).join(', '),
  }));
}

function pictureIn({ images }: ScreenSource, sha: string, said: { pixelMm: number } | null) {
  const image = images.find((i) => i.sha === sha);
  return image ? pictureOf(image, said) : null;
}

function statedOf({ facts }: Seen, exposure: string): OrderScreen['exposures'][number]['stated'] {
  const said = facts('filmSized').findLast((f) => f.exposure === exposure);
  return said?.size ? { ...said.size, detector: typeof said.detail?.detector === 'string' ? said.detail.detector : '' } : null;
}

function lastVerdicts({ facts }: Seen, exposure: string): { study: string; verdict: 'accept' | 'retake'; reasons: string[] }[] {
  const byStudy = new Map(facts('verdictGiven').filter((f) => f.exposure === exposure).map((f) => [f.study, f]));
  return [...byStudy.values()].flatMap(({ study, verdict, reasons }) => (verdict === 'undecided' ? [] : [{ study, verdict, reasons }]));
}
