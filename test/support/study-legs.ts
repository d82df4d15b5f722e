import type { Joint } from '#libs/contracts/common';
import type { PackageScreen } from '#libs/contracts/screens/reader';
import { centres } from '#seed/centre';
import type { Road } from './road.js';
import { openLink, type Session } from './session.js';

/** Invented readings. */
export const readings: Record<string, Joint[]> = {
  hipLaxity: [{ joint: 'left', value: 0.38 }, { joint: 'right', value: 0.44 }],
  elbow: [{ joint: 'left', value: '0', findings: { osteophytes: 'none', primaryLesion: 'absent' } }, { joint: 'right', value: '1', findings: { osteophytes: 'under2', primaryLesion: 'absent' } }],
};

export interface Reading { joints?: Joint[]; ref?: string; comment?: string }

/** A package as somebody at the centre has it, behind the link of the mail. */
export class AtReader {
  private constructor(readonly session: Session, public screen: PackageScreen) {}

  /** Waits for the mail with the package's link. */
  static async of(road: Road, study: string): Promise<AtReader> {
    const number = await numberOf(road, study);
    const centre = Object.values(road.server.scheme.centres).find((c) => c.id === road.screen.studies.find((s) => s.id === study)!.centre.id)!;
    const address = `films@${centres.find((c) => c.name === centre.name)!.mail}`;
    const session = await openLink(road.server.url, await road.server.mail.wait(address, new RegExp(number)));
    const list = await session.read<{ rows: { package: string }[] }>('/api/reader/packages');
    return new AtReader(session, await session.read<PackageScreen>(`/api/reader/packages/${list.rows[0]!.package}`));
  }

  get path(): string { return `/api/reader/packages/${this.screen.package}`; }

  async acknowledge(): Promise<void> {
    this.screen = await this.session.send<PackageScreen>(`${this.path}/acknowledge`);
  }

  async reads({ joints, ref, comment }: Reading & { joints: Joint[] }): Promise<void> {
    this.screen = await this.session.send<PackageScreen>(`${this.path}/result`, { joints, signedBy: 'Noemi Haskel', ...(ref ? { ref } : {}), ...(comment ? { comment } : {}) });
  }
}

async function numberOf(road: Road, study: string): Promise<string> {
  const id = road.screen.studies.find((s) => s.id === study)!.packages.at(-1)!.id;
  return (await road.server.look((tx) => tx.package.findUniqueOrThrow({ where: { id }, select: { number: true } }))).number;
}

export async function dispatch(road: Road, study: string): Promise<AtReader> {
  await road.act('desk', 'seal', study, {});
  await road.act('desk', 'send', study, {});
  return AtReader.of(road, study);
}

/** To a reading that waits for the vet. */
export async function getRead(road: Road, study: string, reading: Reading = {}): Promise<AtReader> {
  const reader = await dispatch(road, study);
  await reader.acknowledge();
  await reader.reads({ joints: readings[road.screen.studies.find((s) => s.id === study)!.protocol]!, ...reading });
  await road.look('vet');
  return reader;
}

export async function accept(road: Road, study: string): Promise<void> {
  const waiting = road.screen.studies.find((s) => s.id === study)!.results.filter((r) => r.state === 'waiting').at(-1)!;
  await road.act('vet', 'acceptResult', study, { result: waiting.id });
}

export async function release(road: Road, study: string): Promise<void> {
  await accept(road, study);
  await road.act('vet', 'releaseLetter', study, {});
}
