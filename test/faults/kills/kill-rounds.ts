import { setTimeout as pause } from 'node:timers/promises';
import path from 'node:path';
import { systemClock } from '#libs/platform/clock/clock';
import { Db } from '#libs/platform/database/db';
import { DiskFileStore } from '#libs/platform/files/disk-file-store';
import type { CentreKey } from '#seed/centre';
import type { DemoScheme } from '#seed/demo-scheme';
import { foundScheme } from '#seed/found-scheme';
import { runCrowd } from '../crowd/run-crowd.js';
import { halfWritten, lostFacts, mailFigures, missingFiles } from './aftermath.js';
import { bringToRest } from './bring-to-rest.js';
import { Chance } from './chance.js';
import { FrontDoor } from './front-door.js';
import { hiddenMails } from './hidden-mails.js';
import { KeptProcess, type Child } from './kept-process.js';
import { MoodyMailServer } from './moody-mail-server.js';
import { canBeToday, serverAt, walkRoad } from './walk-road.js';

export interface KillGround {
  rounds: number;
  seed: number;
  /** Ends after the round that is under way, whatever `rounds` says. */
  limitSeconds: number;
  /** So many people at once for so long, when the rounds are over. */
  crowd: { people: number; seconds: number };
  folder: string;
  workerUrl: string;
  apiPorts: number[];
  startApi: (port: number, mailUrl: string) => Child;
  startWorker: (mailUrl: string) => Child;
  /** Kills the database with SIGKILL and starts it again. */
  killDatabase: () => Promise<void>;
  /** Loses every job of the queue, as an operator may do at any time. */
  emptyQueue: () => Promise<void>;
  untilHealthy: (port: number) => Promise<void>;
  row: (name: string, value: number, unit: string) => void;
  say: (line: string) => void;
}

/** Within so many milliseconds from the beginning of a round something is killed: most of a walk. */
const WITHIN_MS = 4000;
const PROTOCOLS: [string, CentreKey][] = [['hipLaxity', 'threnfold'], ['elbow', 'threnfold'], ['hipExtended', 'sluiceGreen'], ['hipLoaded', 'threnfold']];
const GROWN_DAYS = 560;
const MORNING = 9;

/** The straight road again and again while api, worker and database are killed and the mail server has its moods; then a look at what became of it all. Answers what is wrong. */
export async function runKillRounds(ground: KillGround): Promise<string[]> {
  const chance = new Chance(ground.seed);
  const troubles: Error[] = [];
  // A centre whose address is refused for good would be a road of its own, which other tests walk.
  const mail = new MoodyMailServer(new Chance(ground.seed + 1), (to) => !to.startsWith('films@'));
  const mailUrl = await mail.start();
  const db = new Db(ground.workerUrl, { connections: 4 });
  const scheme = await foundScheme(db, new Date());
  await openAllDay(db, scheme);
  const apis = ground.apiPorts.map((port) => new KeptProcess(() => ground.startApi(port, mailUrl)));
  const workers = [0, 1].map(() => new KeptProcess(() => ground.startWorker(mailUrl)));
  await Promise.all(ground.apiPorts.map(ground.untilHealthy));
  const urls = ground.apiPorts.map((port) => `http://127.0.0.1:${port}`);
  const door = new FrontDoor(urls, chance);
  const server = serverAt(await door.open(), scheme);

  const dogs = [...scheme.dogs.values()].filter((d) => d.ageDays > GROWN_DAYS && d.person.channel === 'mail');
  const pairs = PROTOCOLS.flatMap((study) => dogs.map((dog) => ({ dog: dog.call, study })));
  const walked: string[] = [];
  const broken: string[] = [];
  let databaseKills = 0;
  const killOne = async () => {
    await pause(chance.below(WITHIN_MS));
    const victim = chance.oneOf(['api', 'worker', 'database'] as const);
    if (victim === 'api') chance.oneOf(apis).kill();
    else if (victim === 'worker') chance.oneOf(workers).kill();
    else {
      databaseKills++;
      await ground.killDatabase();
    }
  };
  const began = Date.now();
  let rounds = 0;
  for (const { dog, study } of pairs) {
    if (rounds >= ground.rounds || Date.now() - began >= ground.limitSeconds * 1000) break;
    if (!(await canBeToday(server, dog, study))) continue;
    rounds++;
    const [walk] = await Promise.allSettled([walkRoad(server, dog, study), killOne()]);
    if (walk.status === 'fulfilled') walked.push(walk.value);
    else broken.push(`${dog}, ${study[0]}: ${String(walk.reason)}`);
    ground.say(`round ${rounds}: ${dog}, ${study[0]}, ${walk.status === 'fulfilled' ? 'to the end' : String(walk.reason)}`);
  }
  const seconds = (Date.now() - began) / 1000;
  await door.close();
  mail.mood = 'well';
  await Promise.all(ground.apiPorts.map(ground.untilHealthy));
  const processes = [...apis.map((p, i) => ({ name: `api ${i + 1}`, pid: () => p.pid })), ...workers.map((p, i) => ({ name: `worker ${i + 1}`, pid: () => p.pid }))];
  const refused = ground.crowd.people ? await runCrowd({ ...ground, ...ground.crowd, urls, scheme, chance, processes }) : [];
  await Promise.all([...apis, ...workers].map((p) => p.stop()));
  await ground.emptyQueue();
  const files = new DiskFileStore(path.join(ground.folder, 'files'));
  const now = await bringToRest({ db, files, mailUrl, databaseUrl: ground.workerUrl, onError: (error) => troubles.push(error) });

  const look = <T>(work: Parameters<typeof db.system<T>>[1]) => db.system('a test looks', work);
  const [lost, half, noFile, mails] = [await look((tx) => lostFacts(tx, door.acknowledged)), await halfWritten(look, now), await look((tx) => missingFiles(tx, files)), await look((tx) => mailFigures(tx, mail.held, walked, now))];
  const hidden = await hiddenMails({ db, clock: systemClock, publicUrl: 'https://cotyla.example' }, scheme);
  await mail.close();
  await db.close();

  const sum = (all: KeptProcess[], of: 'kills' | 'ownEnds') => all.reduce((n, p) => n + p[of], 0);
  const { row } = ground;
  row('rounds walked', rounds, 'rounds');
  row('rounds that came to the letter', walked.length, 'rounds');
  row('kill -9 of an api', sum(apis, 'kills'), 'times');
  row('kill -9 of a worker', sum(workers, 'kills'), 'times');
  row('kill -9 of the database', databaseKills, 'times');
  row('api or worker ended by itself', sum([...apis, ...workers], 'ownEnds'), 'times');
  for (const [mood, times] of mail.moods) row(`mail server: ${mood}`, times, 'times');
  row('requests', door.requests, 'requests');
  row('requests sent again', door.sentAgain, 'requests');
  row('requests sent to both apis at once', door.sentToBoth, 'requests');
  row('actions acknowledged', door.acknowledged.length, 'actions');
  row('acknowledged facts lost', lost.length, 'facts');
  row('half-written steps', half.length, 'steps');
  row('files or papers missing', noFile.length, 'files');
  row('mails written', mails.written, 'mails');
  row('mails delivered', mails.delivered, 'mails');
  row('mails refused by the mail server for good', mails.bounced, 'mails');
  row('mails whose outcome is not known', mails.unknown, 'mails');
  row('mails not known or refused that their order does not show', hidden.length, 'mails');
  row('mails dropped with a reason', mails.dropped, 'mails');
  row('mails that wait for their day', mails.later, 'mails');
  row('mails lost unnoticed', mails.lost.length, 'mails');
  row('mails sent twice', mails.twice.length, 'mails');
  row('duration of the rounds', seconds, 's');
  return [...broken, ...refused, ...lost, ...half, ...noFile, ...hidden, ...mails.lost, ...mails.twice];
}

/** A dog comes in on the day that it is booked for, so the practices lie where it is morning now, and take dogs until midnight. */
async function openAllDay(db: Db, scheme: DemoScheme): Promise<void> {
  // There are zones from 12 hours west to 14 hours east.
  const hours = MORNING - new Date().getUTCHours();
  const east = hours < -11 ? hours + 24 : hours;
  const zone = `Etc/GMT${east > 0 ? '-' : '+'}${Math.abs(east)}`;
  await db.system('preparing a test', (tx) => tx.practice.updateMany({ data: { zone, policy: { hours: { from: '00:00', to: '23:59', days: [1, 2, 3, 4, 5, 6, 7], slotMinutes: 15 } } } }));
  for (const house of Object.values(scheme.houses)) house.zone = zone;
}
