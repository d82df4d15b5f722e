import { actions } from '../actions.js';
import type { Evaluation, Hold, Standing } from '../evaluation.js';
import { isOpenStudy, isOpenVisit } from '../steps.js';

type Thing = Standing<string> & { id: string; scope: 'order' | 'visit' | 'study' };

export function things({ order, visits, studies }: Evaluation): Thing[] {
  return [
    { ...order, scope: 'order' },
    ...Object.values(visits).map((visit): Thing => ({ ...visit, scope: 'visit' })),
    ...Object.values(studies).map((study): Thing => ({ ...study, scope: 'study' })),
  ];
}

/** Open visits and studies in which nothing can be done and nothing ends by time. */
export function stuck(evaluation: Evaluation): string[] {
  const open = [
    ...Object.values(evaluation.visits).filter((visit) => isOpenVisit(visit.step)),
    ...Object.values(evaluation.studies).filter((study) => isOpenStudy(study.step)),
  ];
  return open
    .filter((thing) => thing.next.length === 0 && !thing.holds.some((hold) => hold.until !== undefined))
    .map((thing) => `${thing.id} at ${thing.step}`);
}

/** Holds that nobody can end: no way is allowed, or held only by holds that can be ended, and time does not help. */
export function endless(evaluation: Evaluation): string[] {
  const all = things(evaluation);
  const holds = all.flatMap((thing) => thing.holds);
  const canEnd = (hold: Hold, seen: Set<Hold>): boolean => {
    if (hold.until !== undefined) return true;
    if (seen.has(hold)) return false;
    const further = new Set(seen).add(hold);
    return hold.ways.some((way) => placesFor(way, hold, all).some((thing) => {
      if (thing.next.includes(way)) return true;
      const because = thing.refused[way];
      return because !== undefined && because.every((code) => holds.some((other) => other.code === code && canEnd(other, further)));
    }));
  };
  return holds.filter((hold) => !canEnd(hold, new Set())).map((hold) => `${hold.code} on ${hold.on.scope} ${hold.on.id}`);
}

function placesFor(way: Hold['ways'][number], hold: Hold, all: Thing[]): Thing[] {
  const { scope } = actions[way];
  return all.filter((thing) => thing.scope === scope && (scope !== hold.on.scope || thing.id === hold.on.id));
}

/** Actions whose permission does not agree with the holds that weigh on them. */
export function misjudged(evaluation: Evaluation): string[] {
  const wrong: string[] = [];
  for (const thing of things(evaluation)) {
    const own = [...evaluation.order.holds, ...thing.holds];
    const anywhere = things(evaluation).flatMap((other) => other.holds);
    for (const action of thing.next) {
      if (own.some((hold) => hold.forbids.includes(action))) wrong.push(`${action} allowed on ${thing.id} against a hold`);
      if (actions[action].scope !== thing.scope) wrong.push(`${action} offered on a ${thing.scope}`);
    }
    for (const [action, because] of Object.entries(thing.refused)) {
      const forbidding = anywhere.filter((hold) => (hold.forbids as string[]).includes(action)).map((hold) => hold.code);
      if (because.length === 0 || because.some((code) => !forbidding.includes(code))) wrong.push(`${action} refused on ${thing.id} without a hold`);
    }
  }
  return wrong;
}
