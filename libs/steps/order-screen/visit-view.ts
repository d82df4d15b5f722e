import { questionWords, type Question } from '#libs/contracts/common';
import type { VisitView } from '#libs/contracts/screens/order';
import type { Prices } from '#libs/contracts/register';
import { stepName } from '#libs/register/spoken-names';
import { t } from '#libs/words/spoken';
import { estimateOf } from '../booking/estimate-of.js';
import { visitCharges } from '../booking/visit-charges.js';
import type { Work } from '../record/work.js';

type Facts = Pick<Work, 'facts' | 'evaluation' | 'order'>;
type Named = { byName?: string };
const by = (f: object): string => (f as Named).byName ?? '';
const text = (v: unknown): string | null => (typeof v === 'string' && v ? v : null);

/** The record of one visit, read off its facts for the page. */
export function visitView(work: Facts, id: string, prices: Prices | null): VisitView {
  const { facts, evaluation, order } = work;
  const of = <T extends { visit?: string }>(all: T[]): T[] => all.filter((f) => f.visit === id);
  const standing = evaluation.visits[id]!;
  const booked = of(facts('visitBooked')).at(-1);
  const where = standing.where ? order.practices[standing.where]?.name : undefined;
  const consent = of(facts('consentGiven')).filter((f) => f.purpose === 'sedation').at(-1);
  const withdrawn = of(facts('consentWithdrawn')).filter((f) => f.purpose === 'sedation').at(-1);
  const admitted = of(facts('admitted')).at(-1);
  const numbers = [...facts('orderOpened'), ...facts('dogRestated')].flatMap((f) => f.numbers ?? []);
  const examined = of(facts('examined')).at(-1);
  const started = of(facts('sedationStarted'));
  const recovery = of(facts('recoverySigned')).at(0);
  const sheet = of(facts('sheetGiven')).at(0);
  return {
    id,
    step: standing.step,
    stepLabel: stepName(standing.step),
    day: standing.day ?? null,
    start: standing.start ?? null,
    where: where ?? null,
    room: text(booked?.detail?.roomName),
    operator: text(booked?.detail?.operatorName),
    nurse: text(booked?.detail?.nurseName),
    vet: text(booked?.detail?.vetName),
    studies: standing.studies,
    estimate: visitEstimateView(work, id, prices),
    answers: answersOf(of(facts('answersGiven'))),
    consent: consent ? { answer: withdrawn && withdrawn.rec > consent.rec ? 'taken back' : consent.answer, signer: text(consent.detail?.name) ?? by(consent), at: consent.at, emergency: (consent.emergency as Record<string, unknown> | undefined) ?? null } : null,
    admitted: admitted ? { weightKg: admitted.weightKg, bodyCondition: admitted.bodyCondition, fastedHours: admitted.fastedHours, at: admitted.at } : null,
    scans: of(facts('identityScanned')).map((f) => ({ place: f.place, numbers: f.numbers, matches: f.numbers.length === 1 && numbers.includes(f.numbers[0]!), at: f.at, by: by(f) })),
    examined: examined ? { statusClass: examined.statusClass, reason: examined.reason ?? null, findings: text(examined.detail?.findings), by: by(examined), at: examined.at } : null,
    plans: of(facts('planSigned')).map((f) => ({ id: f.plan, kind: f.kind, by: by(f), at: f.at, weightKg: f.weightKg, used: started.some((s) => s.plan === f.plan), lines: (f.detail?.lines as { words: string; steps: string[] }[] | undefined) ?? [] })),
    asleepSince: standing.step === 'sedated' || standing.step === 'imaged' ? (started.at(0)?.at ?? null) : null,
    readings: of(facts('readingTaken')).map((f) => ({ at: f.at, by: by(f), values: f.detail ?? {} })),
    drugs: of(facts('drugRecorded')).map((f) => ({ at: f.at, by: by(f), event: f.event, batch: f.batch, words: [text(f.detail?.drug), f.detail?.amountMl ? `${String(f.detail.amountMl)} mL` : null, text(f.detail?.route)].filter(Boolean).join(', ') })),
    events: of(facts('eventRecorded')).map((f) => ({ at: f.at, by: by(f), what: f.what })),
    recovery: recovery ? { signs: recovery.signs, by: by(recovery), at: recovery.at } : null,
    sheet: sheet ? { to: sheet.to, by: by(sheet), at: sheet.at, document: sheet.document } : null,
  };
}

export function visitEstimateView(work: Facts, id: string, prices: Prices | null): VisitView['estimate'] {
  const accepted = work.facts('estimateAccepted').filter((f) => f.visit === id).at(-1);
  if (accepted) return { lines: (accepted.detail?.lines as { words: string; amountMinor: number }[] | undefined) ?? [], totalMinor: accepted.amountMinor, currency: accepted.currency, accepted: `${text(accepted.detail?.name) ?? ''}, ${t.known(accepted.how)}` };
  if (!prices) return null;
  const { lines, total } = estimateOf({ prices, studies: visitCharges(work, id) });
  return { lines, totalMinor: total.amountMinor, currency: total.currency, accepted: null };
}

function answersOf(given: { answers: Partial<Record<Question, string>>; detail?: Record<string, unknown> }[]): VisitView['answers'] {
  const last = new Map<Question, { answer: string; note: string | null }>();
  for (const f of given) {
    const notes = (f.detail?.notes ?? {}) as Record<string, string>;
    for (const [q, answer] of Object.entries(f.answers) as [Question, string][]) last.set(q, { answer, note: notes[q] ?? last.get(q)?.note ?? null });
  }
  return [...last].map(([question, a]) => ({ question, words: questionWords[question], ...a }));
}
