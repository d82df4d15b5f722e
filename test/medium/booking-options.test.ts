import { randomUUID } from 'node:crypto';
import type { Dog, NewDog } from '#libs/contracts/register';
import type { Slot } from '#libs/contracts/booking';
import { addIdentifier } from '#libs/register/dogs/add-identifier';
import { createDog } from '#libs/register/dogs/create-dog';
import { addText } from '#libs/register/practice/add-text';
import { bookingOptions } from '#libs/steps/booking/booking-options';
import { createBooking } from '#libs/steps/booking/create-booking';
import { restateDog } from '#libs/steps/order/restate-dog';
import { aDog, anotherNumber, TODAY, twoPractices, type Ground } from './register-support/two-practices.js';

let ground: Ground;
beforeEach(async () => { ground = await twoPractices(); });
afterEach(() => ground.close());

const make = (more: Partial<NewDog> = {}): Promise<Dog> => createDog(ground.deps, ground.weir.desk, aDog({ identifier: anotherNumber(), ...more }));
const laxity = () => ({ protocol: 'hipLaxity', version: '2', centre: ground.centre });
const ask = (dog: string, more: object = {}) => bookingOptions(ground.deps, ground.weir.desk, { dog, studies: [], ...more });
const study = async (dog: string, protocol: string, more: object = {}) => (await ask(dog, more)).studies.find((s) => s.protocol === protocol)!;
const born = (day: string): Pick<NewDog, 'birth'> => ({ birth: { earliest: day, latest: day, precision: 'day' } });
const when = (slots: Slot[]) => slots.map((s) => `${s.day} ${s.start}`);

describe('what a study says before it is booked', () => {
  it('names age, views, operator, centres and fee', async () => {
    const dog = await make();
    const options = await ask(dog.id, { studies: [laxity()] });
    expect(options.studies.find((s) => s.protocol === 'hipLaxity')).toEqual({
      protocol: 'hipLaxity', version: '2', name: 'Hips, laxity', views: 3, centres: [{ id: ground.centre, name: 'Reading centre, Threnfold' }], problems: [],
      says: 'Old enough: 112 days needed. Three views. Operator The radiographer may take them until 31 March 2027.',
    });
    // The invented study of loaded views has no centre here.
    expect(options.studies.map((s) => s.protocol)).toEqual(['hipLaxity', 'hipExtended', 'elbow']);
    // Invented prices: 9,600 + 3 x 4,200 + 5,800 + 1,200 = 29,200, and 10% tax.
    expect(options.estimate.total).toEqual({ amountMinor: 32_120, currency: 'MRK' });
    expect((await ask(dog.id)).estimate).toEqual({ lines: [], total: { amountMinor: 0, currency: 'MRK' } });
  });

  // 112 days: 16 weeks, as the study's own row has it (libs/science/protocols/hip-laxity.ts names its source)
  it('is too young until the day on which it is old enough, by the latest day of birth', async () => {
    const dog = await make({ birth: { earliest: '2026-08-01', latest: '2026-08-06', precision: 'estimate' } });
    const tooYoung = await study(dog.id, 'hipLaxity');
    expect(tooYoung.problems).toEqual([{ code: 'TOO_YOUNG', words: 'Too young on 25 November 2026, by 1 day: 112 days needed. Old enough from 26 November 2026.', earliestDate: '2026-11-26' }]);
    expect(tooYoung.says).toMatch(/^112 days needed\. Three views\./);
    expect((await study(dog.id, 'hipLaxity', { from: '2026-11-26' })).problems).toEqual([]);
    expect((await ask(dog.id, { studies: [laxity()] })).slots[0]!.day).toBe('2026-11-26');
  });

  it('asks more of the breeds of which the scheme asks more', async () => {
    const dog = await make({ breed: 'marsh  mastiff', ...born('2025-08-01') });
    expect((await study(dog.id, 'hipExtended')).problems).toMatchObject([{ code: 'TOO_YOUNG', earliestDate: '2027-02-01' }]);
    expect((await study(dog.id, 'elbow')).problems).toEqual([]);
  });

  it('needs an operator and checked equipment on that day', async () => {
    const dog = await make();
    expect((await study(dog.id, 'hipLaxity', { from: '2027-04-01' })).problems.map((p) => p.code)).toEqual(['OPERATOR']);
    expect((await study(dog.id, 'hipLaxity', { from: '2027-07-01' })).problems).toMatchObject([{ code: 'OPERATOR' }, { code: 'EQUIPMENT', words: expect.stringContaining('X-ray machine held until 30 June 2027') }, { code: 'EQUIPMENT' }]);
    expect((await study(dog.id, 'elbow', { from: '2027-04-01' })).problems).toEqual([]);
  });

  it('is not repeated too soon after an accepted result', async () => {
    const dog = await make();
    const [order, part] = [randomUUID(), randomUUID()];
    await ground.everywhere(async (tx) => {
      await tx.order.create({ data: { id: order, practiceId: ground.weir.id, accession: 'AR26-00001-X', dogId: dog.id, closed: true } });
      await tx.study.create({ data: { id: part, orderId: order, practiceId: ground.weir.id, protocol: 'elbow', version: '1', centreId: ground.centre, step: 'reported', open: false } });
      const at = new Date('2026-10-01T10:00:00Z');
      await tx.fact.create({ data: { orderId: order, id: randomUUID(), type: 'resultAccepted', at, rec: at, by: 'x', byName: 'x', role: 'vet', practice: ground.weir.id, body: { study: part, result: 'r' } } });
    });
    const options = await ask(dog.id, { studies: [{ protocol: 'elbow', version: '2', centre: ground.centre }] });
    // 180 days after 1 October 2026; our own interval, no source
    expect(options.studies.find((s) => s.protocol === 'elbow')!.problems).toMatchObject([{ code: 'REPEAT_TOO_SOON', earliestDate: '2027-03-30' }]);
    expect(options.slots[0]!.day).toBe('2027-03-30');
    expect(options.repeats).toEqual([{ accession: 'AR26-00001-X', orderId: order, words: 'Elbows, no visit; closed.' }]);
  });

  it('is nothing for a dog that has died', async () => {
    const dog = await make();
    await ground.everywhere((tx) => tx.dog.update({ where: { id: dog.id }, data: { died: new Date('2026-11-20T00:00:00Z') } }));
    const options = await ask(dog.id);
    expect(options.slots).toEqual([]);
    expect(options.studies.every((s) => s.problems[0]?.code === 'DOG_DIED')).toBe(true);
  });
});

describe('the times offered', () => {
  it('are the next working days, one in the morning and one in the afternoon, never one that has begun', async () => {
    const { slots } = await ask((await make()).id, { studies: [laxity()] });
    // 10:00 in Vienna now, a Wednesday; the default day is 08:00 to 16:00 in steps of 45 minutes
    expect(when(slots)).toEqual(['2026-11-25 10:15', '2026-11-25 12:30', '2026-11-26 08:00', '2026-11-26 12:30', '2026-11-27 08:00', '2026-11-27 12:30']);
    expect(slots[0]).toMatchObject({ minutes: 45, room: { name: 'Room 1' }, operator: { id: ground.weir.radiographer.id }, nurse: { id: ground.weir.nurse.id }, vet: { id: ground.weir.vet.id } });
  });

  it('fill one day when one is asked for', async () => {
    const { slots } = await ask((await make()).id, { from: '2026-12-01', days: 1 });
    expect(when(slots)).toEqual(['08:00', '08:45', '09:30', '10:15', '11:00', '12:30'].map((t) => `2026-12-01 ${t}`));
  });

  it('keep to the practice’s own hours and free days', async () => {
    await ground.everywhere((tx) => tx.practice.update({ where: { id: ground.weir.id }, data: { policy: { hours: { from: '13:00', to: '14:30', days: [6], slotMinutes: 30 }, holidays: ['2026-11-28'] } } }));
    expect(when((await ask((await make()).id)).slots)).toEqual(['2026-12-05 13:00', '2026-12-05 13:30', '2026-12-05 14:00']);
  });

  it('leave out whoever and whatever is occupied', async () => {
    const dog = await make();
    const busy = (id: string, from: string, until: string) => ground.everywhere((tx) => tx.$executeRaw`INSERT INTO slot (practice_id, visit_id, order_id, kind, resource_id, period) VALUES (${ground.weir.id}::uuid, gen_random_uuid(), gen_random_uuid(), 'x', ${id}::uuid, tstzrange(${from}::timestamptz, ${until}::timestamptz))`);
    await busy(ground.weir.nurse.id, '2026-12-01T08:00:00+01:00', '2026-12-01T12:00:00+01:00');
    await busy(ground.weir.vet.id, '2026-12-01T12:00:00+01:00', '2026-12-01T13:15:00+01:00');
    expect(when((await ask(dog.id, { from: '2026-12-01', days: 1 })).slots)).toEqual(['2026-12-01 13:15', '2026-12-01 14:00', '2026-12-01 14:45']);
  });

  it('need people of their own: a nurse who takes the views does not watch at the same time', async () => {
    await ground.everywhere((tx) => tx.staff.updateMany({ where: { id: ground.weir.radiographer.id }, data: { roles: ['radiographer', 'nurse'] } }));
    await ground.everywhere((tx) => tx.staff.updateMany({ where: { id: ground.weir.nurse.id }, data: { active: false } }));
    expect((await ask((await make()).id, { studies: [laxity()] })).slots).toEqual([]);
  });

  it('leave out the hour that the clocks skip, and offer an hour that comes twice once', async () => {
    await ground.everywhere((tx) => tx.practice.update({ where: { id: ground.weir.id }, data: { policy: { hours: { from: '01:00', to: '04:00', days: [7], slotMinutes: 60 } } } }));
    const dog = await make();
    // Europe/Vienna: 02:00 to 03:00 is missing on 28 March 2027 and came twice on 31 October 2027 (IANA time zone database)
    expect(when((await ask(dog.id, { from: '2027-03-28', days: 1 })).slots)).toEqual(['2027-03-28 01:00', '2027-03-28 03:00']);
    await ground.everywhere((tx) => tx.equipment.updateMany({ data: { checkedUntil: new Date('2028-01-01T00:00:00Z') } }));
    expect(when((await ask(dog.id, { from: '2027-10-31', days: 1 })).slots)).toEqual(['2027-10-31 01:00', '2027-10-31 02:00', '2027-10-31 03:00']);
  });

  it('can be booked as they are offered, are then gone, and the order learns a new number', async () => {
    const dog = await make({ sex: 'male' });
    const options = await ask(dog.id, { studies: [laxity()] });
    const [slot] = options.slots;
    const person = options.people[0]!.id;
    const { order } = await createBooking(ground.deps, ground.weir.desk, {
      key: randomUUID(), dog: dog.id, studies: [laxity()], slot: { ...slot!, room: slot!.room.id, operator: slot!.operator.id, nurse: slot!.nurse.id, vet: slot!.vet.id },
      answers: Object.fromEntries(options.questions.map((q) => [q.question, 'no'])), answerNotes: {}, payer: person, addressees: [{ person, channel: 'mail' }],
      estimateTotalMinor: options.estimate.total.amountMinor, estimateAccepted: { by: person, how: 'phone' },
    });
    const after = await ask(dog.id, { studies: [laxity()] });
    expect(when(after.slots)).not.toContain(`${slot!.day} ${slot!.start}`);
    expect(after.repeats).toMatchObject([{ orderId: order, words: 'Hips, laxity, visit 25 November 2026; still open: Asked for.' }]);
    const holds = await ground.everywhere((tx) => tx.order.findUniqueOrThrow({ where: { id: order }, select: { evaluation: true } }));
    expect(JSON.stringify(holds.evaluation)).not.toContain('ANSWERS_MISSING');
    const number = anotherNumber();
    await addIdentifier(ground.deps, ground.weir.nurse, dog.id, { ...number, from: TODAY }, restateDog(ground.deps, ground.weir.nurse));
    const facts = await ground.everywhere((tx) => tx.fact.findMany({ where: { orderId: order, type: 'dogRestated' } }));
    expect(facts.map((f) => f.body)).toEqual([{ numbers: [number.value], birth: { date: '2025-10-03', latest: '2025-10-03', precision: 'day' } }]);
  });
});

describe('what is asked and offered around it', () => {
  it('follows sex and neutering', async () => {
    const questions = async (more: Partial<NewDog>) => (await ask((await make(more)).id)).questions.map((q) => q.question);
    expect(await questions({ sex: 'female' })).toEqual(['season', 'pregnant', 'nursing', 'ill', 'medicine', 'operated']);
    expect(await questions({ sex: 'female', neutered: true })).toEqual(['nursing', 'ill', 'medicine', 'operated']);
    expect(await questions({ sex: 'male' })).toEqual(['ill', 'medicine', 'operated']);
  });

  it('is the newest advice of each title, and the people around the dog today', async () => {
    const text = { kind: 'advice' as const, title: 'Grown dogs', forDogs: 'healthy dogs over one year', body: 'Give no food in the night before the visit.' };
    await addText(ground.deps, ground.weir.vet, text);
    ground.clock.advance({ minutes: 1 });
    await addText(ground.deps, ground.weir.vet, { ...text, body: `${text.body} Water may stay.` });
    const options = await ask((await make({ breeder: 'Jonas Vey' })).id);
    expect(options.advice).toMatchObject([{ title: 'Grown dogs', forDogs: 'healthy dogs over one year', approvedBy: 'The vet' }]);
    expect(options.people).toMatchObject([{ name: 'Lena Stroud', roles: ['owner'], email: 'lena@mail.example' }, { name: 'Jonas Vey', roles: ['breeder'], email: null }]);
  });

  it('is written down as a view of the dog', async () => {
    const dog = await make();
    await ask(dog.id);
    const look = await ground.everywhere((tx) => tx.audit.findFirstOrThrow({ where: { action: 'viewBookingOptions' } }));
    expect(look).toMatchObject({ by: ground.weir.desk.id, practiceId: ground.weir.id, detail: { dogs: [dog.id] } });
  });
});

describe('bad input', () => {
  it('for a dog of another practice, or none, is answered as not there', async () => {
    const dog = await make();
    for (const id of [dog.id, randomUUID()]) await expect(bookingOptions(ground.deps, ground.quay.manager, { dog: id, studies: [] })).rejects.toMatchObject({ code: 'NOT_FOUND' });
  });

  it.each<[string, () => object]>([
    ['a dog that is no id', () => ({ dog: 'Ilka' })],
    ['a study that is not installed', () => ({ studies: [{ ...laxity(), protocol: 'knees' }] })],
    ['an older version', () => ({ studies: [{ ...laxity(), version: '1' }] })],
    ['a centre that does not read it', () => ({ studies: [{ ...laxity(), centre: randomUUID() }] })],
    ['one study twice', () => ({ studies: [laxity(), laxity()] })],
    ['a day that does not exist', () => ({ from: '2026-02-30' })],
    ['too many days', () => ({ days: 32 })],
    ['a number for a list', () => ({ studies: 3 })],
  ])('with %s is refused', async (_what, more) => {
    const dog = await make();
    await expect(ask(dog.id, more())).rejects.toMatchObject({ code: 'BAD_INPUT' });
  });
});
