import type { InviteReader } from '#libs/register/practice/add-reader';
import type { Actor } from '../record/actor.js';
import { say } from './say.js';

/** The link to choose a password goes to the centre's own address, never to whoever entered the reader. */
export const inviteReader = (actor: Actor): InviteReader => async (tx, invited) => {
  const centre = await tx.centre.findUniqueOrThrow({ where: { id: invited.centre }, select: { name: true, email: true } });
  await say(tx, { once: `join:${invited.staff}`, kind: 'join', template: 'join', order: null, practice: actor.practice, to: centre, subject: invited.staff, data: { name: invited.name, email: invited.email } });
};
