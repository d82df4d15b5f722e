import { useCase } from '../record/use-case.js';

/** Kept, and nothing else: a machine's answer says nothing about whether somebody has the films. */
export const recordAutoReply = useCase('recordAutoReply', (_work, on, input) => [{ type: 'autoReplied', study: on, ...(input.note ? { detail: { note: input.note } } : {}) }]);
