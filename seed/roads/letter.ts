import { deliverPost } from './post.js';
import { factsOf, perform, type Road } from './road.js';

export async function acceptResult(road: Road, study: string): Promise<void> {
  const result = factsOf(road, 'resultArrived').filter((f) => f.study === study).at(-1)!.result;
  await perform(road, road.lane.vet, 'acceptResult', study, { result });
}

/** The vet lets the letter go; it arrives with the next post. */
export async function acceptAndRelease(road: Road, study: string): Promise<void> {
  await acceptResult(road, study);
  road.clock.advance({ minutes: 5 });
  await perform(road, road.lane.vet, 'releaseLetter', study, {});
  await deliverPost(road);
  if (road.dog.person.channel === 'post') await posted(road, study);
}

/** What goes on paper is known to have come when the desk says so. */
async function posted(road: Road, study: string): Promise<void> {
  const letter = factsOf(road, 'letterReleased').filter((f) => f.study === study).at(-1)!;
  road.clock.advance({ days: 2 });
  await perform(road, road.house.desk, 'recordOutcome', study, { letter: letter.letter, to: road.dog.person.id, outcome: 'delivered' });
}
