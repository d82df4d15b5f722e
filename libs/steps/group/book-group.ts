import type { GroupBooking, NewGroupBooking } from '#libs/contracts/group-booking';
import type { Tx } from '#libs/platform/database/db';
import { noteChange } from '#libs/register/note-change';
import { t } from '#libs/words/spoken';
import type { Actor } from '../record/actor.js';
import type { StepDeps } from '../record/step-deps.js';
import { StepError } from '../record/step-error.js';
import { bookDogOfGroup, type Line } from './dog-in-group.js';
import { readGroup } from './read-groups.js';
import { sayGroupBooked } from './say-group-booked.js';

/** Several dogs in one call, each an order of its own. The same key again answers with the same bookings. */
export async function bookGroup(deps: StepDeps, actor: Actor, input: NewGroupBooking): Promise<GroupBooking> {
  return deps.db.practice(actor.practice, async (tx) => {
    // Two desks, or one press that came twice: the second waits here until the first has been written.
    await tx.$queryRaw`SELECT 1 FROM practice WHERE id = ${actor.practice}::uuid FOR UPDATE`;
    const known = await readGroup(tx, input.key);
    if (known) return known;
    const lines: Line[] = [];
    for (const dog of input.dogs) lines.push(await bookDogOfGroup(tx, deps, actor, input, dog));
    const names = await namesOf(tx, lines);
    if (lines.every((l) => 'problem' in l)) throw noneOf(lines, names);
    await keep(tx, deps, actor, input, lines);
    await sayGroupBooked(lines, names);
    await noteChange(tx, actor, 'bookGroup', input.key);
    return (await readGroup(tx, input.key))!;
  });
}

async function namesOf(tx: Tx, lines: Line[]): Promise<Map<string, string>> {
  const dogs = await tx.dog.findMany({ where: { id: { in: lines.map((l) => l.dog) } }, select: { id: true, callName: true } });
  return new Map(dogs.map((d) => [d.id, d.callName]));
}

function noneOf(lines: Line[], names: Map<string, string>): StepError {
  const because = lines.flatMap((l) => ('problem' in l ? [{ code: l.problem.code, words: `${names.get(l.dog) ?? 'A dog'}: ${l.problem.words}` }] : []));
  return new StepError('NOT_ELIGIBLE', t('None of these dogs can be booked like this.'), { because });
}

async function keep(tx: Tx, deps: StepDeps, actor: Actor, { key, dogs, caller, payer, litter }: NewGroupBooking, lines: Line[]): Promise<void> {
  const dams = await tx.dog.findMany({ where: { id: { in: dogs.map((d) => d.dog) } }, distinct: ['damName'], select: { damName: true } });
  await tx.groupBooking.create({
    data: {
      id: key, practiceId: actor.practice, callerId: caller, payerId: payer, by: actor.id, at: deps.clock.now(), day: new Date(`${dogs[0]!.slot.day}T00:00:00Z`),
      litter: litter !== undefined, whole: litter?.whole ?? false, born: litter?.born ?? null, alive: litter?.alive ?? null, dam: dams.length === 1 ? (dams[0]?.damName ?? null) : null,
    },
  });
  await tx.groupBookingDog.createMany({
    data: lines.map((l, place) => ({ groupId: key, dogId: l.dog, practiceId: actor.practice, place, ...('work' in l ? { orderId: l.work.order.id } : { problem: l.problem }) })),
  });
}
