import type { Ignored } from './evaluation.js';
import { factKinds } from './fact-kinds.js';
import type { Fact } from './facts.js';

/** Facts as they count: one per id, corrected, merged once per key, in the order in which they happened. */
export function effective(facts: readonly Fact[]): { facts: Fact[]; ignored: Ignored[] } {
  const ignored: Ignored[] = [];
  const byId = new Map<string, Fact>();
  for (const given of facts) {
    const fact = normal(given);
    if (!(fact.type in factKinds)) ignored.push({ fact: fact.id, type: fact.type, reason: 'UNKNOWN_TYPE' });
    // The same id twice is a repeated request. Should two differ, the choice must not depend on which came first.
    else if (!byId.has(fact.id) || before(fact, byId.get(fact.id) as Fact)) byId.set(fact.id, fact);
  }
  const gone = removed(byId, ignored);
  const standing = [...byId.values()].filter((fact) => !gone.has(fact.id)).sort(compareFacts);
  return { facts: mergeByKey(standing), ignored };
}

/** Earlier first: by when it happened, was recorded, and last by id so that the order is always the same. */
export function compareFacts(a: Fact, b: Fact): number {
  return compare(a.at, b.at) || compare(a.rec, b.rec) || compare(a.id, b.id);
}

export const isAfter = (a: Fact | undefined, b: Fact | undefined): boolean =>
  a !== undefined && (b === undefined || compareFacts(a, b) > 0);

/** Ids that corrections and strikes take out. A set: a target stays replaced even if its corrector is struck too. */
function removed(byId: Map<string, Fact>, ignored: Ignored[]): Set<string> {
  const gone = new Set<string>();
  for (const fact of byId.values()) {
    const targetId = fact.type === 'factStruck' ? fact.fact : fact.corrects;
    if (targetId === undefined) continue;
    const target = byId.get(targetId);
    // A correction carries the whole fact, so it counts even while the one it replaces has not arrived.
    if (!target && fact.type !== 'factStruck') continue;
    const reason = refusal(fact, target);
    if (reason) {
      ignored.push({ fact: fact.id, type: fact.type, reason });
      if (fact.type !== 'factStruck') gone.add(fact.id);
    } else {
      gone.add(targetId);
    }
  }
  return gone;
}

function refusal(fact: Fact, target: Fact | undefined): Ignored['reason'] | null {
  if (!target || (fact.type !== 'factStruck' && fact.type !== target.type)) return 'NO_SUBJECT';
  if (factKinds[target.type].final) return 'FINAL_FACT';
  // Only an older fact can be a target, or two could remove each other.
  const older = compare(target.rec, fact.rec) || compare(target.id, fact.id);
  return older < 0 ? null : 'NOT_OLDER';
}

function mergeByKey(sorted: Fact[]): Fact[] {
  const seen = new Set<string>();
  return sorted.filter((fact) => {
    const { key } = factKinds[fact.type];
    if (!key) return true;
    const fields = fact as unknown as Record<string, unknown>;
    const value = JSON.stringify([fact.type, ...key.map((name) => fields[name])]);
    if (seen.has(value)) return false;
    seen.add(value);
    return true;
  });
}

function before(a: Fact, b: Fact): boolean {
  return (compareFacts(a, b) || compare(JSON.stringify(a), JSON.stringify(b))) < 0;
}

const ISO_LENGTH = '2026-01-01T00:00:00.000Z'.length;

/** Instants are compared as text, so all must be written alike. */
function normal(fact: Fact): Fact {
  if (fact.at.length === ISO_LENGTH && fact.rec.length === ISO_LENGTH) return fact;
  return { ...fact, at: isoInstant(fact.at), rec: isoInstant(fact.rec) };
}

export function isoInstant(instant: string): string {
  const time = Date.parse(instant);
  return Number.isNaN(time) ? instant : new Date(time).toISOString();
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
