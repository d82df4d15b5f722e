import type { Actor } from '#libs/register/actor';

export type { Actor } from '#libs/register/actor';

export const queueActor = (practice: string): Actor => ({ id: 'queue', name: 'the program', roles: ['queue'], practice });
