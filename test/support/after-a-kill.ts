import type { Road } from './road.js';

/** A moment between nothing and the time that a mail takes, from a seed that is printed. */
export function randomMoment(what: string): number {
  const seed = Number(process.env.SEED ?? Math.floor(Math.random() * 1_000_000));
  console.info(`${what}: worker killed with SEED=${seed}`);
  // One step of a linear congruential generator; the numbers are those of "Numerical Recipes" (from memory).
  return (((seed * 1_664_525 + 1_013_904_223) >>> 0) / 2 ** 32) * 500;
}

/** Does something while the worker is killed in the middle of what comes of it, and lets another one and a person finish it. */
export async function withAKill(road: Road, work: () => Promise<unknown>): Promise<void> {
  const { server } = road;
  await server.killingWorker(async () => void (await work()), randomMoment(expect.getState().currentTestName ?? 'preparing'));
  await takenOver(road);
}

/** Another worker has done what the dead one left, and what nobody knows of it a person has looked into. */
export async function takenOver(road: Road): Promise<void> {
  const { server } = road;
  await server.settled();
  // What was claimed by a worker that died is found by the sweep.
  await server.until(new Date(server.clock.now().getTime() + 4 * 60_000));
  await server.sweep();
  await sayWhatCame(road);
}

/** Whether a mail left before the kill is not known; a person asks whoever should have it, and says so. */
async function sayWhatCame(road: Road): Promise<void> {
  const { server } = road;
  const desk = await road.as('desk');
  await road.look();
  for (const { id, kind } of road.screen.messages.filter((m) => m.state === 'unknown')) {
    const arrived = server.mail.all.some((mail) => mail.messageId.includes(id));
    if (!arrived || (kind !== 'result' && kind !== 'package')) {
      await desk.send(`/api/orders/${road.id}/messages/${id}/resolve`, { arrived });
      continue;
    }
    for (const study of road.screen.studies) {
      for (const send of study.sends.filter((s) => s.outcome === 'unknown')) await road.act('desk', 'resolveSend', study.id, { send: send.id, arrived });
      for (const letter of study.letters) for (const to of letter.outcomes.filter((o) => o.outcome === 'unknown')) await road.act('desk', 'resolveLetter', study.id, { letter: letter.id, to: to.to, arrived });
    }
  }
  await sentOnce(road);
}

/** Nothing waits, and no mail came twice. */
export async function sentOnce(road: Road): Promise<void> {
  const { server } = road;
  await server.settled();
  await road.look();
  expect(road.screen.messages.filter((m) => !['delivered', 'dropped', 'waiting'].includes(m.state))).toEqual([]);
  const ids = server.mail.all.map((mail) => mail.messageId);
  expect(ids).toHaveLength(new Set(ids).size);
}
