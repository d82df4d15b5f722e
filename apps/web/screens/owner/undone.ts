import type { ScreenSentence } from '#libs/words/de/screen';

export type Purpose = 'sedation' | 'study' | 'sendAll' | 'statistics';

/** Said before the yes, not after it: what a later "no" can still stop and what it cannot. */
export const cannotBeUndone: Record<Purpose, ScreenSentence> = {
  sedation: 'You can take this yes back at any time. Once your dog is asleep, the sleep itself cannot be taken back: no more pictures are taken, and your dog is watched until awake.',
  study: 'You can take this yes back at any time. Pictures that have been taken and films that have been sent cannot be undone; a letter you have received stays with you.',
  sendAll: 'You can take this yes back until the films are packed for the reader. Films that have been sent cannot be called back.',
  statistics: 'You can take this yes back at any time. A picture of the breed that was already counted and dated keeps the value, without your name; later ones leave it out.',
};
