import type { Actor } from '../record/actor.js';

/** Who holds the emailed link: one person, one order. */
export interface Owner {
  person: string;
  name: string;
  order: string;
  practice: string;
}

export const ownerActor = (o: Owner): Actor => ({ id: o.person, name: o.name, roles: ['owner'], practice: o.practice });
