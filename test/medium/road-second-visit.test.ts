import { addDays } from '#libs/pathway/days';
import type { BookingOptions } from '#libs/contracts/booking';
import type { OwnerPage } from '#libs/contracts/screens/owner';
import type { CapturedMail } from '#libs/platform/mail/capture-server';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import type { Session } from '#test/support/session';
import { dispatch } from '#test/support/study-legs';
import { admit, goHome, image, ownerSigns, sedate, throughTheVisit } from '#test/support/visit-legs';

let server: RunningServer;
beforeAll(async () => { server = await startServer(); }, 60_000);
afterAll(async () => { await server.close(); });

const invitation = (mail: CapturedMail) => mail.attachments.find((a) => a.filename === 'invitation.ics')!.content.toString().replaceAll('\r\n ', '');

async function bookAgain(road: Road, inDays: number): Promise<void> {
  const study = road.study();
  const studies = [{ protocol: study.protocol, version: study.version, centre: study.centre.id }];
  const options = await (await road.as('desk')).send<BookingOptions>('/api/booking/options', { dog: road.dog.id, studies, from: addDays(road.today, inDays), days: 7 });
  road.slot = options.slots[0]!;
  const { day, start, minutes, room, operator, nurse, vet } = road.slot;
  await road.act('desk', 'book', road.visit.id, { day, start, minutes, room: room.id, operator: operator.id, nurse: nurse.id, vet: vet.id });
}

describe('films that the centre sends back', () => {
  let road: Road;
  let owner: Session;
  beforeAll(async () => {
    road = await Road.book(server, { dog: 'Bracken', studies: [['elbow', 'threnfold']], inDays: 1 });
    owner = await throughTheVisit(road);
    const reader = await dispatch(road, road.study().id);
    await reader.acknowledge();
    await reader.session.send(`${reader.path}/reject`, { views: ['mlFlexedRight'], reasons: ['The right elbow lay turned.'] });
    await road.look();
  });

  it('are shown on the order with the view, and told to the owner in plain words', async () => {
    expect(road.study()).toMatchObject({ step: 'rejected', chase: null });
    expect(road.study().views.filter((v) => v.required).map((v) => [v.view, v.accepted])).toEqual([['mlFlexedLeft', true], ['mlFlexedRight', false]]);
    expect(road.screen.happened.map((h) => h.what).join(' ')).toContain('The right elbow lay turned.');
    expect((await owner.read<OwnerPage>('/api/owner')).status).toContain('asks for some pictures again');
  });

  it('make a second visit, confirmed by mail, for which everything is asked again', async () => {
    await road.act('desk', 'openVisit', road.id, { studies: [road.study().id], reason: 'rejected', payer: road.dog.person.id });
    await bookAgain(road, 7);
    const mail = await server.mail.wait(road.email, /^Bracken: visit on /, 2);
    expect(invitation(mail)).toContain(`UID:visit-${road.visit.id}`);
    expect(mail.text).toContain('Give no food in the night before the visit.');
    expect(mail.text).not.toContain('This is a new time.');
    expect(road.screen.holds.map((h) => h.code)).toEqual(expect.arrayContaining(['CONSENT_SEDATION_MISSING', 'ESTIMATE_NOT_ACCEPTED', 'ANSWERS_MISSING']));
  });

  it('ask for the missing view alone, and go to the centre in a new package with every film', async () => {
    await ownerSigns(road, 2);
    await road.untilVisit();
    await admit(road);
    await sedate(road);
    await image(road);
    await goHome(road);
    expect(road.screen.exposures.map((e) => e.view)).toEqual(['mlFlexedLeft', 'mlFlexedRight', 'mlFlexedRight']);
    const reader = await dispatch(road, road.study().id);
    expect(reader.screen.images.map((i) => [i.view, i.attempt])).toEqual([['mlFlexedLeft', 1], ['mlFlexedRight', 1], ['mlFlexedRight', 2]]);
  });
});

describe('a visit that is moved', () => {
  let road: Road;
  let before: string;
  beforeAll(async () => {
    road = await Road.book(server, { dog: 'Rill', studies: [['elbow', 'threnfold']], inDays: 7 });
    before = road.slot.day;
    await bookAgain(road, 14);
  });

  it('is confirmed anew, and stays the same entry in the owner’s calendar', async () => {
    const [first, second] = [await server.mail.wait(road.email, /^Rill: visit on /), await server.mail.wait(road.email, /^Rill: visit on /, 2)];
    expect(second.text).toContain('This is a new time.');
    for (const mail of [first, second]) expect(invitation(mail)).toContain(`UID:visit-${road.visit.id}`);
    expect(invitation(first)).toContain('SEQUENCE:0');
    expect(invitation(second)).toContain('SEQUENCE:1');
  });

  it('is reminded of for its new day only', async () => {
    await server.until(road.at(-2, '10:00'));
    expect(before).not.toBe(road.slot.day);
    expect(server.mail.to(road.email).filter((m) => m.subject.startsWith('Rill: your visit on'))).toHaveLength(1);
  });

  it('takes its entry out of the calendar when the practice cancels', async () => {
    await road.act('desk', 'cancelVisit', road.visit.id, { side: 'practice', why: 'The table is being repaired.' });
    const mail = await server.mail.wait(road.email, /cancelled$/);
    expect(mail.text).toContain('The table is being repaired.');
    const entry = invitation(mail);
    for (const line of ['METHOD:CANCEL', 'STATUS:CANCELLED', 'SEQUENCE:2', `UID:visit-${road.visit.id}`]) expect(entry).toContain(line);
  });
});

it('nothing broke inside the server', () => expect(server.errors).toEqual([]));
