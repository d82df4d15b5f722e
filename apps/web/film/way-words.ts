import { t } from '../words/t.js';

const WAYS: Record<string, string> = {
  left: 'the dog’s left', right: 'the dog’s right', head: 'the head', tail: 'the tail', back: 'the back', belly: 'the belly', nose: 'the nose', midline: 'the middle of the dog',
  outside: 'the outside of the limb', body: 'the body', toes: 'the toes', palm: 'the back of the fore paw', sole: 'the sole of the hind paw',
};

/** A direction in the dog, in words. */
export const wayWords = (direction: string): string => t.known(WAYS[direction] ?? direction);
