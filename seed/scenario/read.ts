import { enterResult, readings } from '../roads/centre.js';
import { acceptAndRelease, acceptResult } from '../roads/letter.js';
import { laterDays, perform, studyOf } from '../roads/road.js';
import { takeTo } from '../roads/take-to.js';
import { elbows, extended, laxity, type Plan } from './plan.js';

/** Answered and reported. */
export const read: Plan[] = [
  {
    dog: 'Cinder', studies: [laxity], visit: { inDays: -17 },
    play: async (road, days) => {
      await takeTo(road, 'answered', { kind: 'tight', joints: [{ joint: 'left', value: 0.21 }, { joint: 'right', value: 0.27 }] });
      road.clock.set(days.minutesAgo(38));
      await acceptResult(road, studyOf(road));
      // Released a moment ago: the worker prints and mails it.
      road.clock.set(days.minutesAgo(20));
      await perform(road, road.lane.vet, 'releaseLetter', studyOf(road), {});
    },
  },
  { dog: 'Heron', studies: [laxity, extended], visit: { inDays: -27 }, play: (road) => takeTo(road, 'reported') },
  { dog: 'Rowan', studies: [extended, elbows], visit: { inDays: -34 }, play: (road) => takeTo(road, 'reported') },
  {
    dog: 'Cobble', studies: [laxity], visit: { inDays: -24 },
    play: (road) => takeTo(road, 'reported', { joints: [{ joint: 'left', value: 0.38 }, { joint: 'right', reason: 'gasInJoint' }] }),
  },
  {
    dog: 'Tansy', studies: [elbows], visit: { inDays: -40 },
    play: async (road) => {
      const study = studyOf(road);
      await takeTo(road, 'reported', { ref: 'T-2041' });
      laterDays(road, 6);
      // The centre's own later version of the same reading, under the same number.
      await enterResult(road, study, { ref: 'T-2041', joints: [readings.elbow![0]!, { joint: 'right', value: '1', findings: { osteophytes: 'under2', sclerosis: 'none', primaryLesion: 'absent' } }], comment: 'Right elbow looked at again: a small spur.' });
      laterDays(road, 1);
      await acceptAndRelease(road, study);
    },
  },
  { dog: 'Slate', studies: [extended], visit: { inDays: -30 }, play: (road) => takeTo(road, 'reported') },
  { dog: 'Kestrel', studies: [laxity], visit: { inDays: -22 }, play: (road) => takeTo(road, 'reported') },
];
