import type { Actor } from './actor.js';

/**
 * Part of a reading statement that writes down who looked, in the same round trip.
 * $1 practice, $2 who, $3 role.
 */
export const viewed = (action: string, detail: string, when: string): string =>
  `looked AS (INSERT INTO audit (practice_id, by, role, action, detail) SELECT $1::uuid, $2, $3, '${action}', ${detail} WHERE ${when})`;

export const viewer = (actor: Actor): [practice: string, who: string, role: string] => [actor.practice, actor.id, actor.roles[0] ?? 'none'];
