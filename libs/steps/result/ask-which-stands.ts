import { say } from '../messages/say.js';
import { lastSending } from '../dispatch/last-send.js';
import { conflictOf } from '../order-screen/conflict-view.js';
import { resultsOf } from '../order-screen/results-view.js';
import { shortDay } from '../record/day-words.js';
import { useCase } from '../record/use-case.js';

/** Both readings go back to the centre side by side; what it answers is written down by the vet, who chooses nothing. */
export const askWhichStands = useCase('askWhichStands', async (work, on) => {
  const { tx, order } = work;
  const differing = new Set(conflictOf(work, on)?.results);
  const row = await tx.package.findUniqueOrThrow({ where: { id: lastSending(work, on).package } });
  const { study } = row.summary as unknown as { study: { name: string } };
  const centre = order.centres[work.evaluation.studies[on]!.centre]!;
  const readings = resultsOf(work, on).filter((r) => differing.has(r.id)).map((r) => `${r.ref}, which came ${HOW[r.channel] ?? r.channel} on ${shortDay(r.at.slice(0, 10))}: ${r.joints.map((j) => `${j.name} ${j.words}`).join('; ')}.`);
  const before = work.facts('whichStandsAsked').filter((f) => f.study === on).length;
  await say(tx, {
    once: `which-stands:${on}:${before}`, kind: 'secondReading', template: 'whichStands', order: order.id, practice: order.practice, subject: on,
    to: { name: centre.name, email: centre.email }, data: { number: row.number, study: study.name, readings },
  });
  return [{ type: 'whichStandsAsked', study: on }];
});

const HOW: Record<string, string> = { page: 'by the reader’s page', file: 'as a file', post: 'by post', webhook: 'from your computer', phone: 'by telephone' };
