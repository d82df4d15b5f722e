import { TestClock } from '#libs/platform/clock/test-clock';
import type { BookingOptions } from '#libs/contracts/booking';
import { localDay } from '#libs/pathway/zones';
import { currentProtocols } from '#libs/science/protocols/catalogue';
import { dogNamed, type DemoScheme } from '#seed/demo-scheme';
import type { CentreKey } from '#seed/centre';
import { readings } from '#seed/roads/centre';
import { demoSignIns } from '#seed/sign-ins';
import { Road } from '../../support/road.js';
import type { RunningServer } from '../../support/running-server.js';
import { signIn, type Session } from '../../support/session.js';
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

/** Whether the dog's own practice can take this study today: it has who and what it needs, a free time, and the last one is long enough ago. */
export async function canBeToday(server: RunningServer, call: string, [protocol, centre]: [string, CentreKey]): Promise<boolean> {
  server.clock.set(new Date());
  const dog = dogNamed(server.scheme, call);
  const desk = await server.as(dog.house.desk.name);
  const today = localDay(server.clock.now().toISOString(), dog.house.zone);
  const chosen = { protocol, version: currentProtocols().find((p) => p.code === protocol)!.version, centre: server.scheme.centres[centre].id };
  const options = await desk.send<BookingOptions>('/api/booking/options', { dog: dog.id, studies: [chosen], from: today, days: 1 });
  return options.slots[0]?.day === today && options.studies.find((s) => s.protocol === protocol)?.problems.length === 0;
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
  // A reader's answer that broke on its way is sent again and kept as a copy; the vet accepts the one that waits.
  await road.act('vet', 'acceptResult', id, { result: road.study().results.find((r) => r.state === 'waiting')!.id });
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
