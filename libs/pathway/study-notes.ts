import type { Bag } from './bag.js';

/** Notes to an archive that did not come through, and of which nobody has told the centre in another way. */
export function notesNotTaken(facts: Bag): string[] {
  const done = new Set([...facts.all('noteOutcome').filter((fact) => fact.outcome === 'arrived'), ...facts.all('noteTold')].map((fact) => fact.note));
  return [...new Set(facts.all('noteOutcome').map((fact) => fact.note))].filter((note) => !done.has(note));
}
