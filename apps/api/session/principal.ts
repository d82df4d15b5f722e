import type { Me } from '#libs/contracts/session';
import type { Role } from '#libs/contracts/common';
import type { Actor } from '#libs/steps/record/actor';
import { asLanguage } from '#libs/words/languages';
import { t } from '#libs/words/spoken';
import { StepError } from '#libs/steps/record/step-error';

/** Who a request comes from, as the session's row says. */
export interface Principal {
  kind: Me['kind'];
  csrf: string;
  staff: string | null;
  name: string;
  roles: Role[];
  practice: string | null;
  centre: string | null;
  scheme: string | null;
  order: string | null;
  package: string | null;
  person: string | null;
  home: string | null;
  place: string;
  zone: string;
  demo: boolean;
  /** Chosen by the person; null until then. */
  language: string | null;
}

/** Somebody who works in a practice, as the record names them. */
export function staffActor(who: Principal): Actor {
  if (who.kind !== 'staff' || !who.practice || !who.staff) throw new StepError('NOT_YOUR_ROLE');
  return { id: who.staff, name: who.name, roles: who.roles.filter((r): r is Exclude<Role, 'lead'> => r !== 'lead'), practice: who.practice };
}

export function meOf(who: Principal, captured: boolean): Me {
  return {
    kind: who.kind,
    id: who.staff ?? who.person,
    name: who.name,
    roles: who.roles,
    home: who.home ? { id: (who.practice ?? who.centre ?? who.scheme)!, name: who.home, place: who.place } : null,
    zone: who.zone ?? 'UTC',
    csrf: who.csrf,
    demo: who.demo,
    language: who.language ? asLanguage(who.language) : t.language,
    mailbox: captured && who.kind !== 'reader' && who.kind !== 'readerLink' && (who.demo || who.roles.includes('manager')),
  };
}
