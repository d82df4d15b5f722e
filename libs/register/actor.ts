import type { Role } from '#libs/pathway/facts';

/** Who does something, as the record remembers it. */
export interface Actor {
  id: string;
  name: string;
  /** In the pathway's words; an owner or reader behind a link has just the one. */
  roles: Role[];
  /** The practice whose eyes the action has. */
  practice: string;
}
