import { z } from 'zod';
import { sentence } from '../common.js';
import { field } from './fields.js';

/** POST /api/orders/:order/incidents/:incident/close */
export const incidentClosed = z.object({ words: field(sentence, 'What was found, and what was changed') });
