import { findProtocol } from '../protocols/catalogue.js';
import type { JointReading, Protocol } from '../protocols/types.js';

/**
 * Versions of a protocol whose values are counted together, because nothing that is measured has changed between
 * them: our own judgement of the shipped rows, no source. A version that is not named here stands alone. A pool keeps
 * the name that its sets were first frozen under, so they stay in force when a comparable version comes.
 */
const comparable: Record<string, { name: string; versions: string[] }[]> = {
  // Version 2 adds a reason for no value and a waiting time; the index is taken in the same way.
  hipLaxity: [{ name: '1+2', versions: ['1', '2'] }],
  // Version 2 records more beside the grade; the grades, and what makes them, are the same.
  elbow: [{ name: '1', versions: ['1', '2'] }],
};

/**
 * The name of what a reading may be counted with: one protocol, versions declared comparable, and, where the reader
 * follows dated criteria, those of one year. Readings of different pools are never put together.
 */
export function poolOf({ code, version }: Pick<Protocol, 'code' | 'version'>, joints: readonly JointReading[] = []): string {
  const name = comparable[code]?.find(({ versions }) => versions.includes(version))?.name ?? version;
  const criteria = joints.map(({ findings }) => findings?.criteria).find((found) => typeof found === 'string');
  return `${code}@${name}${criteria ? `:${criteria}` : ''}`;
}

export interface Pool { protocol: Protocol; criteria: string | null }

/** What a pool's name says: its newest installed version, and the criteria; undefined when none is installed. */
export function readPool(pool: string): Pool | undefined {
  const [, code, name, criteria] = /^([^@]+)@([^:]+)(?::(.+))?$/.exec(pool) ?? [];
  if (!code || !name) return undefined;
  const versions = comparable[code]?.find((group) => group.name === name)?.versions ?? [name];
  const protocol = versions.map((version) => findProtocol(code, version)).findLast((known) => known !== undefined);
  return protocol && { protocol, criteria: criteria ?? null };
}
