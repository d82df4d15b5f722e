import { useCase } from '../record/use-case.js';
import { lastSend } from '../dispatch/last-send.js';

export const acknowledge = useCase('acknowledge', (work, on, input) => [{ type: 'acknowledged', study: on, send: input.send ?? lastSend(work, on) }]);
