import { TestClock } from '#libs/platform/clock/test-clock';
import type { DemoScheme } from '#seed/demo-scheme';
import type { CentreKey } from '#seed/centre';
import { demoSignIns } from '#seed/sign-ins';
import { Road } from '../../support/road.js';
import type { RunningServer } from '../../support/running-server.js';
import { signIn, type Session } from '../../support/session.js';
import { readings } from '../../support/study-legs.js';
import { admit, goHome, image, sedate } from '../../support/visit-legs.js';

/** What a road needs of a server that runs in other processes. */
export function serverAt(url: string, scheme: DemoScheme): RunningServer {
  const sessions = new Map<string, Promise<Session>>();
  const as = (name: string) => {
    const { email, password } = demoSignIns().find((s) => s.name === name)!;
    const session = sessions.get(name) ?? signIn(url, email, password);
    sessions.set(name, session);
    return session;
  };
  const part: Partial<RunningServer> = { url, scheme, clock: new TestClock(new Date()), as };
  return part as RunningServer;
}

/** The whole straight road of a dog with one study, done by the people of the practice and a reader; answers the order. */
export async function walkRoad(server: RunningServer, dog: string, study: [string, CentreKey]): Promise<string> {
  server.clock.set(new Date());
  const road = await Road.book(server, { dog, studies: [study], inDays: 0 });
  await signAtTheDesk(road);
  await admit(road);
  await sedate(road);
  await image(road);
  await goHome(road);
  const { id } = road.study();
  await road.act('desk', 'seal', id, {});
  await road.act('desk', 'send', id, {});
  await road.act('desk', 'acknowledge', id, {});
  await isRead(road, study);
  await road.look('vet');
  await road.act('vet', 'acceptResult', id, { result: road.study().results.at(-1)!.id });
  await road.act('vet', 'releaseLetter', id, {});
  return road.id;
}

async function signAtTheDesk(road: Road): Promise<void> {
  const { person } = road.dog;
  const signed = { answer: 'yes' as const, signer: person.id, signerRole: 'owner' as const, typedName: person.name };
  await road.act('desk', 'acceptEstimate', road.visit.id, { payer: person.id, how: 'phone', totalMinor: road.visit.estimate!.totalMinor });
  await road.act('desk', 'consentStudy', road.study().id, signed);
  await road.act('desk', 'consentSendAll', road.study().id, signed);
  await road.act('desk', 'consentSedation', road.visit.id, { ...signed, emergency: { resuscitate: 'yes', limitMinor: 60_000, number: person.phone, collectors: [person.name] } });
}

async function isRead(road: Road, [protocol, centre]: [string, CentreKey]): Promise<void> {
  const reader = await road.server.as(road.server.scheme.centres[centre].readers[0]!.name);
  const list = await reader.read<{ rows: { package: string }[] }>('/api/reader/packages');
  const mine = road.study().packages.at(-1)!.id;
  if (!list.rows.some((row) => row.package === mine)) throw new Error('The reader does not see the package.');
  await reader.send(`/api/reader/packages/${mine}/result`, { joints: readings[protocol]!, signedBy: reader.me.name });
}
