import type { Tx } from '#libs/platform/database/db';

/** Takes other private people out of what one person is given: a co-owner's name is not theirs to have. */
export type Masking = <T>(value: T) => T;

export async function maskOthers(tx: Tx, person: string, dogs: string[]): Promise<Masking> {
  const others = await tx.$queryRaw<{ id: string; name: string; email: string | null; phone: string | null; address: string | null; own: string }[]>`
    SELECT DISTINCT p.id, p.name, p.email, p.phone, p.address, (SELECT concat_ws(' ', name, email, phone, address) FROM person WHERE id = ${person}::uuid) AS own
    FROM dog_role r JOIN person p ON p.id = r.person_id WHERE r.dog_id = ANY(${dogs}::uuid[]) AND p.id <> ${person}::uuid`;
  // What the two have in common, a household's phone for one, is theirs too.
  const words = others.flatMap((o) => [o.id, o.name, o.email, o.phone, o.address].filter((w): w is string => w !== null && w.length > 2 && !o.own.includes(w)));
  const mask = (text: string): string => words.reduce((masked, word) => masked.replaceAll(word, 'another person'), text);
  const walk = (value: unknown): unknown => {
    if (typeof value === 'string') return mask(value);
    if (Array.isArray(value)) return value.map(walk);
    if (value !== null && typeof value === 'object' && !(value instanceof Date)) return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, walk(v)]));
    return value;
  };
  return <T>(value: T) => walk(value) as T;
}
