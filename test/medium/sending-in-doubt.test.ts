import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import { throughTheVisit } from '#test/support/visit-legs';

describe('a mail with films of which nobody knows whether it came', () => {
  let server: RunningServer;
  let road: Road;
  const packageMails = () => road.screen.messages.filter((m) => m.kind === 'package').map((m) => m.state);
  beforeAll(async () => {
    server = await startServer();
    road = await Road.book(server, { dog: 'Fennec', studies: [['elbow', 'threnfold']], inDays: 1 });
    await throughTheVisit(road);
    await road.act('desk', 'seal', road.study().id, {});
    server.mail.nextTo('films@threnfold.example', 'cutOff');
    await road.act('desk', 'send', road.study().id, {});
    await server.settled();
    await road.look();
  }, 60_000);
  afterAll(async () => { await server.close(); });

  it('holds the order until a person has asked the centre', () => {
    expect(packageMails()).toEqual(['unknown']);
    expect(road.screen.holds.map((h) => h.code)).toContain('SEND_UNCERTAIN');
  });

  it('is in doubt nowhere once the person has said that it came', async () => {
    await road.act('desk', 'resolveSend', road.study().id, { send: road.study().sends[0]!.id, arrived: true });
    expect(road.screen.holds.map((h) => h.code)).not.toContain('SEND_UNCERTAIN');
    expect(packageMails()).toEqual(['delivered']);
    expect(server.errors).toEqual([]);
  });
});
