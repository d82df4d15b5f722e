import type { Calendar, CalendarAsked } from '#libs/contracts/calendar';
import { localDay } from '#libs/pathway/zones';
import { accreditationOn, takesFilms } from '#libs/register/practice/accredited';
import { currentProtocols } from '#libs/science/protocols/catalogue';
import { audit } from '#libs/platform/audit/audit';
import { stepName, studyName } from '#libs/register/spoken-names';
import { openingHours, daysFrom } from '../booking/opening-hours.js';
import type { Actor } from '../record/actor.js';
import { instantOf, withOffset } from '../record/local-time.js';
import type { StepDeps } from '../record/step-deps.js';

interface Held { visit: string; order: string; dog: string; step: string; studies: { protocol: string; version: string }[]; from: Date; until: Date; room: string | null; operator: string | null }

/** Rooms and operators of a practice over a day or a few, with the visits that occupy them. */
export async function readCalendar(deps: StepDeps, actor: Actor, { day, days }: CalendarAsked): Promise<Calendar> {
  const now = deps.clock.now();
  return deps.db.practice(actor.practice, async (tx) => {
    await audit(tx, { by: actor.id, role: actor.roles[0] ?? 'none', action: 'viewCalendar', practice: actor.practice, subject: day ?? 'today' });
    const { zone, policy } = await tx.practice.findUniqueOrThrow({ where: { id: actor.practice }, select: { zone: true, policy: true } });
    const today = localDay(now.toISOString(), zone);
    const shown = daysFrom(day ?? today, days);
    const hours = openingHours(policy, shown[0]!);
    const rooms = await tx.room.findMany({ where: { practiceId: actor.practice, kind: 'xray' }, select: { id: true, name: true }, orderBy: { name: 'asc' } });
    const staff = await tx.staff.findMany({ where: { practiceId: actor.practice }, select: { id: true, name: true, roles: true, active: true }, orderBy: { name: 'asc' } });
    const stored = await tx.accreditation.findMany({ where: { practiceId: actor.practice }, select: { staffId: true, protocol: true, from: true, until: true }, orderBy: { until: 'desc' } });
    const held = stored.map((a) => ({ staff: a.staffId, protocol: a.protocol, from: dayOf(a.from), until: dayOf(a.until) }));
    const [first, last] = [instantOf(shown[0]!, '00:00', zone), instantOf(daysFrom(shown.at(-1)!, 2)[1]!, '00:00', zone)];
    const visits = await tx.$queryRaw<Held[]>`
      SELECT v.id AS visit, v.order_id AS order, d.call_name AS dog, v.step, min(lower(s.period)) AS from, max(upper(s.period)) AS until,
        (SELECT COALESCE(jsonb_agg(jsonb_build_object('protocol', st.protocol, 'version', st.version) ORDER BY st.protocol), '[]') FROM study st WHERE st.order_id = v.order_id) AS studies,
        max(s.resource_id::text) FILTER (WHERE s.kind = 'room') AS room, max(s.resource_id::text) FILTER (WHERE s.kind = 'operator') AS operator
      FROM slot s JOIN visit v ON v.id = s.visit_id JOIN orders o ON o.id = v.order_id JOIN dog d ON d.id = o.dog_id
      WHERE s.practice_id = ${actor.practice}::uuid AND s.period && tstzrange(${first}, ${last})
      GROUP BY v.id, v.order_id, d.call_name, v.step ORDER BY 5, 3`;
    const nameOf = (among: readonly { id: string; name: string }[], id: string | null) => among.filter((one) => one.id === id).map(({ name }) => ({ id: id!, name }))[0] ?? null;
    const mayTake = (id: string) =>
      currentProtocols().filter((p) => p.needsAccreditation).flatMap((p) => {
        const one = accreditationOn(held, id, p.code, shown[0]!);
        return one ? [{ study: p.deskName, until: one.until }] : [];
      });
    return {
      today, zone, ...openFromTo(hours.starts, hours.slotMinutes),
      days: shown.map((one) => ({ day: one, open: hours.isOpen(one) })),
      rooms,
      operators: staff.filter((s) => s.active && takesFilms(s)).map(({ id, name }) => ({ id, name, mayTake: mayTake(id) })),
      visits: visits.map((v) => ({
        visit: v.visit, order: v.order, dog: v.dog, step: stepName(v.step), movable: v.step === 'booked' || v.step === 'wanted',
        studies: v.studies.map(studyName),
        day: localDay(v.from.toISOString(), zone), start: withOffset(v.from, zone).slice(11, 16), minutes: Math.round((v.until.getTime() - v.from.getTime()) / 60_000),
        room: nameOf(rooms, v.room), operator: nameOf(staff, v.operator),
      })),
    };
  });
}

const dayOf = (date: Date): string => date.toISOString().slice(0, 10);

/** From the first start to the end of the last visit. */
function openFromTo(starts: string[], minutes: number): { from: string; to: string } {
  const [hour, minute] = (starts.at(-1) ?? '16:00').split(':').map(Number) as [number, number];
  const end = hour * 60 + minute + minutes;
  return { from: starts[0] ?? '08:00', to: `${String(Math.floor(end / 60)).padStart(2, '0')}:${String(end % 60).padStart(2, '0')}` };
}
