import { sayBooked, remindOfVisit, visitMail } from '../booking/say-booked.js';
import { say } from '../messages/say.js';
import { ownersByMail } from '../messages/say-to-owner.js';
import type { Work } from '../record/work.js';
import type { Line } from './dog-in-group.js';

/**
 * One mail for all the dogs of a call: a line for each, also for one that was not booked, and a page for each that was.
 * It goes to whoever owns all of them; who owns only some is told of those alone, for a page is its owner's.
 */
export async function sayGroupBooked(lines: Line[], names: Map<string, string>): Promise<void> {
  const works = lines.flatMap((l) => ('work' in l ? [l.work] : []));
  const owners = await Promise.all(works.map((work) => ownersByMail(work)));
  const ofAll = owners[0]!.filter((o) => owners.every((others) => others.some((other) => other.id === o.id)));
  const data = await groupMail(lines, names);
  for (const o of ofAll) await say(works[0]!.tx, { once: `group:${works[0]!.order.id}:${o.id}`, kind: 'groupBooked', template: 'groupBooked', data, order: works[0]!.order.id, practice: works[0]!.order.practice, to: { person: o.id, name: o.name, email: o.email } });
  for (const [i, work] of works.entries()) await tellTheOthers(work, owners[i]!.filter((o) => !ofAll.includes(o) && !ofAll.some((a) => a.id === o.id)).map((o) => o.id));
}

async function tellTheOthers(work: Work, people: string[]): Promise<void> {
  const booked = work.facts('visitBooked').at(-1)!;
  if (people.length > 0) await sayBooked(work, booked, 1, people);
  else await remindOfVisit(work, booked, 1);
}

async function groupMail(lines: Line[], names: Map<string, string>): Promise<Record<string, unknown>> {
  const told = [];
  for (const l of lines) {
    const dog = names.get(l.dog) ?? '';
    told.push('work' in l ? { order: l.work.order.id, ...(await visitMail(l.work, l.work.facts('visitBooked').at(-1)!, 1)) } : { dog, problem: l.problem.words, ...('earliestDate' in l.problem ? { earliestDate: l.problem.earliestDate } : {}) });
  }
  const booked = told.find((l) => 'order' in l)!;
  return { lines: told, day: booked.day, studies: booked.studies, ...('advice' in booked ? { advice: booked.advice, adviceBy: booked.adviceBy } : {}) };
}
