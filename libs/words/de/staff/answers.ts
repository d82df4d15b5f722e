import { booking } from './answers/booking.js';
import { certificate } from './answers/certificate.js';
import { errors } from './answers/errors.js';
import { happened } from './answers/happened.js';
import { holds } from './answers/holds.js';
import { house } from './answers/house.js';
import { geometry } from './geometry.js';
import { readings } from './answers/readings.js';
import { roads } from './answers/roads.js';
import { sending } from './answers/sending.js';
import { contracts } from './pages/contracts.js';
import { visit } from './answers/visit.js';

/** What the server answers those who sign in, in German, by the English sentence. */
export const answers = { ...contracts, ...booking, ...certificate, ...errors, ...geometry, ...happened, ...holds, ...house, ...readings, ...roads, ...sending, ...visit } as const;
