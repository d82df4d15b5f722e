import type { Slot } from '#libs/contracts/booking';
import type { MoveAsked, MoveLook } from '#libs/contracts/calendar';
import { decide } from '#libs/pathway/decide';
import { notAccreditedFor, takesFilms } from '#libs/register/practice/accredited';
import { findProtocol } from '#libs/science/protocols/catalogue';
import type { Protocol } from '#libs/science/protocols/types';
import { t } from '#libs/words/spoken';
import { BOOKING, type BookingSource, type StaffMember } from '../booking/booking-source.js';
import { slotAt } from '../booking/find-slots.js';
import { fitOfStudy } from '../booking/fit-of-study.js';
import { openingHours } from '../booking/opening-hours.js';
import type { Actor } from '../record/actor.js';
import { spokenDay } from '../record/day-words.js';
import { instantOf } from '../record/local-time.js';
import { readOrder } from '../record/order-record.js';
import type { StepDeps } from '../record/step-deps.js';
import { badInput, notFound } from '../record/step-error.js';
import { workOn, type Work } from '../record/work.js';

type Booked = ReturnType<typeof bookedAs>;

/** What moving a visit to another time, room or operator would come to. Nothing is changed by asking; booking it checks once more. */
export async function lookAtMove(deps: StepDeps, actor: Actor, asked: MoveAsked): Promise<MoveLook> {
  const now = deps.clock.now();
  return deps.db.practice(actor.practice, async (tx) => {
    const visit = await tx.visit.findFirst({ where: { id: asked.visit, practiceId: actor.practice }, select: { orderId: true } });
    const record = visit && (await readOrder(tx, visit.orderId));
    if (!record) throw notFound();
    const work = workOn(tx, now, actor, record, deps.publicUrl);
    const [source] = await tx.$queryRawUnsafe<BookingSource[]>(BOOKING, actor.practice, actor.id, actor.roles[0] ?? 'none', record.dog, now);
    if (!source) throw notFound();
    const booked = bookedAs(work, asked.visit);
    refuseUnknown(source, asked);
    // What the visit itself occupies is free for it.
    const own = booked && [instantOf(booked.day, booked.start, source.zone).getTime(), [booked.room, booked.operator, booked.nurse, booked.vet]] as const;
    if (own) source.occupied = source.occupied.filter((o) => !(o.from === own[0] && own[1].includes(o.id)));
    const protocols = (work.evaluation.visits[asked.visit]?.studies ?? []).flatMap((id) => work.evaluation.studies[id] ?? []).flatMap((s) => findProtocol(s.protocol, s.version) ?? []);
    const problems = [...notNow(work, asked.visit), ...problemsOf(source, protocols, asked, now)];
    const slot = problems.length === 0 ? slotFor(source, booked, protocols, asked, now) : undefined;
    if (!slot && problems.length === 0) problems.push(t('Not everybody whom this visit takes is free on {day} at {start}: a room, an operator who may take its views, a nurse and a vet.', { day: spokenDay(asked.day), start: asked.start }));
    return { order: record.id, version: record.version, slot: slot ?? null, problems };
  });
}

function bookedAs(work: Work, visit: string) {
  const last = work.facts('visitBooked').filter((f) => f.visit === visit).at(-1);
  return last && { day: last.day, start: last.start, room: last.room, operator: last.operator, nurse: String(last.detail?.nurse), vet: String(last.detail?.vet), minutes: Number(last.detail?.minutes) };
}

function refuseUnknown({ rooms, staff }: BookingSource, { room, operator }: MoveAsked): void {
  if (room && !rooms.some((r) => r.id === room)) throw badInput('room', t('This room is not in your practice.'));
  if (operator && !staff.some((s) => s.id === operator)) throw badInput('operator', t('This person does not work in your practice.'));
}

function notNow({ evaluation }: Work, visit: string): string[] {
  const answer = decide(evaluation, 'book', { scope: 'visit', id: visit }, 'desk');
  return !answer.allowed && answer.because.includes('NOT_AT_THIS_STEP') ? [t('This visit has begun or is over, so it stays where it is.')] : [];
}

function problemsOf(source: BookingSource, protocols: Protocol[], { day, start, room, operator }: MoveAsked, now: Date): string[] {
  const hours = openingHours(source.policy, day);
  const from = instantOf(day, start, source.zone).getTime();
  const taken = (id: string) => source.occupied.some((o) => o.id === id && o.from < from + hours.slotMinutes * 60_000 && o.until > from);
  const [last, first] = [hours.starts.at(-1), hours.starts[0]];
  const said: string[] = [];
  if (from <= now.getTime()) said.push(t('That time has passed.'));
  if (!hours.isOpen(day)) said.push(t('The practice takes no visits on {day}.', { day: spokenDay(day) }));
  if (first && last && (start < first || start > last)) said.push(t('Visits start from {first} to {last}.', { first, last }));
  for (const protocol of protocols) said.push(...fitOfStudy(source, protocol, day).problems.map((p) => `${protocol.deskName}: ${p.words}`));
  if (room && taken(room)) said.push(t('{find} is taken then.', { find: source.rooms.find((r) => r.id === room)!.name }));
  if (operator) said.push(...operatorProblems(source, protocols, source.staff.find((s) => s.id === operator)!, day, taken(operator)));
  return said;
}

function operatorProblems({ accreditations }: BookingSource, protocols: Protocol[], staff: StaffMember, day: string, taken: boolean): string[] {
  const { id, name } = staff;
  if (!takesFilms(staff)) return [t('{name} takes no films.', { name })];
  const not = notAccreditedFor(accreditations, id, protocols, day);
  return [...not.map((p) => t('{name} is not accredited for {study} on {day}.', { name, study: t.known(p.deskName), day: spokenDay(day) })), ...(taken ? [t('{name} is taken then.', { name })] : [])];
}

/** Whom and what the visit has comes first, so that moving it changes no more than it must; what was asked for comes alone. */
function slotFor(source: BookingSource, booked: Booked, protocols: Protocol[], { day, start, room, operator }: MoveAsked, now: Date): Slot | undefined {
  const first = <T extends { id: string }>(all: T[], id: string | undefined) => [...all.filter((one) => one.id === id), ...all.filter((one) => one.id !== id)];
  const staff = [booked?.vet, booked?.nurse].reduce((all, id) => first(all, id), source.staff);
  const own = { ...source, staff, rooms: room ? source.rooms.filter((r) => r.id === room) : first(source.rooms, booked?.room) };
  const minutes = booked?.minutes ?? openingHours(source.policy, day).slotMinutes;
  const by = (who: string | undefined) => slotAt(own, { protocols, now, ...(who && { operator: who }) }, day, start, minutes);
  return operator ? by(operator) : ((booked && by(booked.operator)) ?? by(undefined));
}
