import type { Role } from '#libs/contracts/common';
import type { PageSentence } from '#libs/words/de/staff/page-words';

/** Kept here because the contracts' own list would bring its checks along to the first page. */
export const roleWords: Record<Role, PageSentence> = {
  desk: 'front desk',
  nurse: 'nurse',
  radiographer: 'radiographer',
  vet: 'veterinarian',
  manager: 'practice manager',
  lead: 'scheme lead',
  reader: 'reader',
};
