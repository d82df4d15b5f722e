import { nameAtDesk } from '#libs/science/protocols/catalogue';
import type { StudyStanding } from '#libs/pathway/evaluation';
import { say } from '../messages/say.js';
import { shortDay } from '../record/day-words.js';
import type { Work } from '../record/work.js';

const CAUSE: Record<string, string> = { unpaid: 'Known cause: not paid.', bounced: 'Known cause: the mail came back.', closed: 'Known cause: the centre is closed.', lost: 'Known cause: the films are lost.', noAnswer: 'Known cause: no answer.' };

/** Reminders are used up, or a cause is known: one named person of the practice is told, once for each time the clock has run. */
export async function escalate(work: Work, standing: StudyStanding): Promise<void> {
  const { tx, order } = work;
  const { chase } = standing;
  if (!chase) return;
  const manager = await tx.staff.findFirst({ where: { practiceId: order.practice, active: true, roles: { has: 'manager' } }, orderBy: { name: 'asc' }, select: { id: true, name: true, email: true } });
  if (!manager) return;
  await say(tx, {
    once: `escalation:${standing.id}:${chase.clock}:${chase.since}`, kind: 'escalation', template: 'escalation', order: order.id, practice: order.practice, subject: standing.id,
    to: { name: manager.name, email: manager.email },
    data: {
      accession: order.accession, study: nameAtDesk(standing), due: shortDay(chase.dueDay), centre: order.centres[standing.centre]?.name ?? 'the centre',
      clock: chase.clock === 'ack' ? 'nobody has said that the package came' : 'no result has come', cause: chase.cause ? CAUSE[chase.cause] : `After ${chase.sent} ${chase.sent === 1 ? 'reminder' : 'reminders'} the cause is not known.`,
    },
  });
}
