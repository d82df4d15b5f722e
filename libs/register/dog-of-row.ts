import type { Dog } from '#libs/contracts/register';
import { ScienceError } from '#libs/science/error';
import { formatTransponder, parseTransponder } from '#libs/science/identifiers/transponder';

export type DogRow = Omit<Dog, 'name' | 'identifiers'> & { identifiers: Omit<Dog['identifiers'][number], 'shown'>[] };

/** As the contract has it: the newest name, numbers in groups, and no empty ways to reach a person. */
export function dogOfRow(row: DogRow): Dog {
  return {
    ...row,
    name: row.names[0]?.name ?? row.callName,
    identifiers: row.identifiers.map((i) => ({ ...i, shown: shown(i.kind, i.value) })),
    people: row.people.map((p) => ({ ...p, person: dropNulls(p.person) })),
  };
}

export function shown(kind: string, value: string): string {
  if (kind !== 'transponder') return value;
  try {
    return formatTransponder(parseTransponder(value));
  } catch (error) {
    // A number of an older record that today's rules refuse is shown as it was written.
    if (error instanceof ScienceError) return value;
    throw error;
  }
}

export const dropNulls = <T extends object>(row: T): T => Object.fromEntries(Object.entries(row).filter(([, v]) => v !== null)) as T;
