import type { Choice, OrderScreen } from '#libs/contracts/screens/order';
import { pictureOf } from '#libs/pathway/picture';
import { notesNotTaken } from '#libs/pathway/study-notes';
import { currentProtocols, findProtocol } from '#libs/science/protocols/catalogue';
import { t } from '#libs/words/spoken';
import { spokenDay, spokenMoment } from '../record/day-words.js';
import type { Work } from '../record/work.js';
import { roleWord } from './names.js';
import type { ScreenSource } from './screen-source.js';

const COVERED: Record<string, string> = { sedation: 'sedation', study: 'pictures', sendAll: 'sending every film' };

/** What the forms of the next actions are filled in from. */
export function choicesOf(source: ScreenSource, { facts, evaluation, order }: Pick<Work, 'facts' | 'evaluation' | 'order'>, names: Record<string, string>): OrderScreen['choices'] {
  const staff = (...roles: string[]): Choice[] => source.staff.filter((s) => roles.length === 0 || s.roles.some((r) => roles.includes(r))).map((s) => ({ id: s.id, name: s.name, hint: s.roles.map(roleWord).join(', ') }));
  const people = new Map(source.dog.people.filter((p) => !p.until).map((p) => [p.person.id, { id: p.person.id, name: p.person.name, hint: p.role }]));
  const views = new Map(Object.values(evaluation.studies).flatMap((s) => findProtocol(s.protocol, s.version)?.views ?? []).map((v) => [v.code as string, { id: v.code as string, name: v.label }]));
  const waiting = new Set(pictureOf(order.facts, order.rules).studies.flatMap((study) => notesNotTaken(study.facts)));
  const at = (iso: string) => spokenMoment(iso, order.practices[order.practice]!.zone);
  const letters = { result: t('Letter with the result'), correction: t('Letter with a correction'), filmsRejected: t('Letter about films sent back') };
  return {
    staff: staff(),
    vets: staff('vet'),
    operators: staff('radiographer', 'vet'),
    nurses: staff('nurse'),
    rooms: source.rooms,
    detectors: source.detectors.map((x) => ({ id: x.id, name: t('{name}, pixels of {mm, number, ::.####} mm', { name: x.name, mm: x.pixelMm }) })),
    people: [...people.values()],
    authorities: source.authorities.map((a) => ({ id: a.id, name: t('{agent} for {owner}', { agent: a.agent, owner: a.owner }), hint: t('{join}, until {until}', { join: a.covers.map((c) => COVERED[c] ?? c).join(', '), until: spokenDay(a.until) }) })),
    practices: source.directory.filter((q) => q.id !== order.practice).map((q) => ({ id: q.id, name: q.name, hint: q.place })),
    centres: Object.entries(order.centres ?? {}).map(([id, c]) => ({ id, name: c.name })),
    protocols: currentProtocols().map((p) => ({ id: p.code, name: p.name, hint: t('version {version}', { version: p.version }) })),
    studies: Object.keys(evaluation.studies).map((id) => ({ id, name: names[id] ?? id })),
    views: [...views.values()],
    reasons: [...new Set([...views.keys()].flatMap((code) => Object.values(evaluation.studies).flatMap((s) => findProtocol(s.protocol, s.version)?.views.find((v) => v.code === code)?.checklist ?? [])))].map((words) => ({ id: words.slice(0, 60), name: words })),
    exposures: facts('exposureTaken').map((f, i) => ({ id: f.exposure, name: t('{view}, film {i}', { view: names[f.view] ?? f.view, i: i + 1 }) })),
    plans: facts('planSigned').map((f) => ({ id: f.plan, name: t('{which} signed {at}', { which: f.kind === 'topUp' ? t('Top-up') : t('Plan'), at: at(f.at) }), hint: t('{weightKg} kg', { weightKg: f.weightKg }) })),
    sends: facts('packageSent').map((f) => ({ id: f.send, name: `${names[f.centre] ?? ''}, ${at(f.at)}` })),
    notes: Object.values(source.deliveries).flatMap(({ notes }) => notes).filter(({ id }) => waiting.has(id)).map(({ id, words, reasons }) => ({ id, name: [t.known(words), ...reasons].join(' ') })),
    results: facts('resultArrived').map((f) => ({ id: f.result, name: `${f.ref}, ${at(f.at)}`, hint: names[f.study] ?? '' })),
    letters: facts('letterReleased').map((f) => ({ id: f.letter, name: `${letters[f.kind]}, ${at(f.at)}` })),
  };
}
