import type { Protocol } from './types.js';

/** An accepted reading of one dog that has not been withdrawn. */
export interface AcceptedReading {
  id: string;
  /** The examination that it belongs to: a second reading is of the same films as the first. */
  study: string;
  reading: 'first' | 'second';
  /** When it was accepted, ISO in UTC. */
  acceptedAt: string;
}

/**
 * Which of a dog's readings counts in statistics, by the protocol's rule alone: values are not looked at, so that
 * nobody can screen a dog again until it comes out better. In the first examination the reading accepted last counts,
 * which is the second one after an appeal and the newer one after an amendment, whichever way it moved.
 */
export function countingReading<R extends AcceptedReading>({ statistics }: Pick<Protocol, 'statistics'>, readings: readonly R[]): R | undefined {
  switch (statistics.counts) {
    case 'firstAccepted': {
      const inOrder = [...readings].sort((a, b) => (a.acceptedAt < b.acceptedAt ? -1 : a.acceptedAt > b.acceptedAt ? 1 : a.id < b.id ? -1 : 1));
      const ofFirstStudy = inOrder.filter(({ study }) => study === inOrder[0]?.study);
      return ofFirstStudy.findLast(({ reading }) => reading === 'second') ?? ofFirstStudy.at(-1);
    }
  }
}
