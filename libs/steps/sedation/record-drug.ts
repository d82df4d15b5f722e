import { randomUUID } from 'node:crypto';
import { useCase } from '../record/use-case.js';

export const recordDrug = useCase('recordDrug', (_work, on, { event, batch, ...detail }) => [{ type: 'drugRecorded', visit: on, entry: randomUUID(), event, batch, detail }]);
