import { createContext, use } from 'react';
import type { Role } from '#libs/contracts/common';
import type { Me } from '#libs/contracts/session';

const MeContext = createContext<Me | null>(null);
export const MeProvider = MeContext.Provider;

/** Who uses the page; only inside the strip, where somebody is signed in. */
export function useMe(): Me {
  const me = use(MeContext);
  if (!me) throw new Error('This page needs somebody to be signed in.');
  return me;
}

export const isStaff = (me: Me) => me.kind === 'staff';
export const hasRole = (me: Me, role: Role) => me.roles.includes(role);

/** The first page of each kind of person. */
export const homeOf = (me: Me) =>
  me.kind === 'ownerLink' ? '/owner' : me.kind === 'reader' || me.kind === 'readerLink' ? '/reader' : me.kind === 'lead' ? '/scheme' : '/';
