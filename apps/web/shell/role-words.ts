import type { Role } from '#libs/contracts/common';

/** Kept here because the contracts' own list would bring its checks along to the first page. */
export const roleWords: Record<Role, string> = {
  desk: 'front desk',
  nurse: 'nurse',
  radiographer: 'radiographer',
  vet: 'veterinarian',
  manager: 'practice manager',
  lead: 'scheme lead',
  reader: 'reader',
};
