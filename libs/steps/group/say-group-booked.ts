import { say } from '../messages/say.js';
import { visitMail } from '../booking/say-booked.js';
import { dayWords } from '../record/day-words.js';
import { ownersByMail } from '../messages/say-to-owner.js';
import type { Line } from './dog-in-group.js';

/** One mail for all the dogs of a call: a line for each, also for one that was not booked, with its own page. */
export async function sayGroupBooked(lines: Line[], names: Map<string, string>): Promise<void> {
  const first = lines.find((l) => 'work' in l);
  if (!first || !('work' in first)) return;
  const { work } = first;
  const visits = await Promise.all(lines.map(async (l) => ('work' in l ? visitMail(l.work, l.work.facts('visitBooked').at(-1)!, 1) : null)));
  const told = lines.map((l, i) => ({
    dog: names.get(l.dog) ?? '',
    ...('work' in l ? { order: l.work.order.id, ...visits[i] } : { problem: l.problem.words }),
  }));
  const known = visits.find((v) => v !== null)!;
  const data = { lines: told, day: first.slot.day, dayWords: dayWords(first.slot.day), studies: known.studies, ...('advice' in known ? { advice: known.advice, adviceBy: known.adviceBy } : {}) };
  for (const person of await ownersByMail(work)) {
    await say(work.tx, { once: `group:${work.order.id}:${person.id}`, kind: 'groupBooked', template: 'groupBooked', data, order: work.order.id, practice: work.order.practice, to: { person: person.id, name: person.name, email: person.email } });
  }
}
