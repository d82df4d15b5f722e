import { around } from './pages/around.js';
import { bills } from './pages/bills.js';
import { booking } from './pages/booking.js';
import { breeds } from './pages/breeds.js';
import { centres } from './pages/centres.js';
import { certificate } from './pages/certificate.js';
import { channels } from './pages/channels.js';
import { common } from './pages/common.js';
import { contracts } from './pages/contracts.js';
import { desk } from './pages/desk.js';
import { dogs } from './pages/dogs.js';
import { fees } from './pages/fees.js';
import { fileSays } from './pages/file-says.js';
import { filmSize } from './pages/film-size.js';
import { forms } from './pages/forms.js';
import { help } from './pages/help.js';
import { integrations } from './pages/integrations.js';
import { mailbox } from './pages/mailbox.js';
import { marks } from './pages/marks.js';
import { order } from './pages/order.js';
import { outcome } from './pages/outcome.js';
import { practice } from './pages/practice.js';
import { readers } from './pages/readers.js';
import { reading } from './pages/reading.js';
import { requests } from './pages/requests.js';
import { resultsIn } from './pages/results-in.js';
import { room } from './pages/room.js';
import { scheme } from './pages/scheme.js';
import { unmatched } from './pages/unmatched.js';

/** What stands on the pages of those who sign in, in German, by the English sentence. A browser loads it when they read German. */
export const pages = {
  ...around, ...bills, ...booking, ...breeds, ...centres, ...certificate, ...channels, ...common, ...contracts, ...desk, ...dogs, ...fees, ...fileSays, ...filmSize,
  ...forms, ...help, ...integrations, ...mailbox, ...marks, ...order, ...outcome, ...practice, ...readers, ...reading, ...requests, ...resultsIn, ...room, ...scheme,
  ...unmatched,
} as const;
