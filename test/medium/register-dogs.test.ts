import { randomUUID } from 'node:crypto';
import type { Dog, NewDog } from '#libs/contracts/register';
import { hasValidCheck } from '#libs/science/identifiers/iso7064';
import { addIdentifier } from '#libs/register/dogs/add-identifier';
import { addPersonRole } from '#libs/register/dogs/add-person-role';
import { createDog } from '#libs/register/dogs/create-dog';
import { listDogs } from '#libs/register/dogs/list-dogs';
import { readDog } from '#libs/register/dogs/read-dog';
import { renameDog } from '#libs/register/dogs/rename-dog';
import { aDog, anotherNumber, TODAY, twoPractices, type Ground } from './register-support/two-practices.js';

let ground: Ground;
beforeAll(async () => { ground = await twoPractices(); });
afterAll(() => ground.close());

const make = (more: Partial<NewDog> = {}): Promise<Dog> => createDog(ground.deps, ground.weir.desk, aDog({ identifier: anotherNumber(), ...more }));
const typed = (value: string, again: string): NewDog['identifier'] => ({ kind: 'transponder', value, how: 'typedTwice', again });
const dogCount = () => ground.everywhere((tx) => tx.dog.count());
const audited = (subject: string) => ground.everywhere((tx) => tx.audit.findMany({ where: { subject }, orderBy: { id: 'asc' } }));

describe('a new dog', () => {
  it('has a number for life with a check character, its owner and its breeder', async () => {
    const dog = await make({ breeder: 'Jonas Vey', studBook: [{ book: 'KS', number: '2025-1107' }] });
    expect(dog.animalId).toMatch(/^CO[0-9A-Z]{9}$/);
    expect(hasValidCheck(dog.animalId)).toBe(true);
    expect(dog.people.map((p) => [p.role, p.person.name, p.person.channel, p.until])).toEqual([['breeder', 'Jonas Vey', 'none', null], ['owner', 'Lena Stroud', 'mail', null]]);
    expect(dog).toMatchObject({ name: 'Ilka vom Talgrund', callName: 'Ilka', studBook: [{ book: 'KS', number: '2025-1107' }], identifiers: [{ kind: 'transponder', how: 'scanned', from: TODAY, until: null }] });
    expect((await audited(dog.id)).map((a) => [a.action, a.by])).toEqual([['createDog', ground.weir.desk.id]]);
  });

  it('may belong to somebody known, who may have bred it too', async () => {
    const first = await make();
    const owner = first.people[0]!.person;
    const second = await make({ owner: { person: owner.id }, breeder: owner.name });
    expect(second.people.map((p) => [p.role, p.person.id])).toEqual([['breeder', owner.id], ['owner', owner.id]]);
  });

  it('is not made twice by two desks at once', async () => {
    const dog = aDog({ identifier: anotherNumber() });
    const tries = await Promise.allSettled([1, 2, 3].map(() => createDog(ground.deps, ground.weir.desk, dog)));
    expect(tries.filter((t) => t.status === 'fulfilled')).toHaveLength(1);
    for (const t of tries) if (t.status === 'rejected') expect(t.reason).toMatchObject({ code: 'ALREADY_THERE', message: expect.stringMatching(/belongs to Ilka \(CO[0-9A-Z]{9}\) already/) });
  });

  it('may carry a number that a dog of another practice carries there: neither is told', async () => {
    const identifier = anotherNumber();
    await make({ identifier });
    await expect(createDog(ground.deps, ground.quay.manager, aDog({ identifier }))).resolves.toMatchObject({ callName: 'Ilka' });
  });

  it('known to the month and born in this month may be born today, not later', async () => {
    const dog = await make({ birth: { earliest: '2026-11-01', latest: '2026-11-30', precision: 'month' } });
    expect(dog.birth).toEqual({ earliest: '2026-11-01', latest: TODAY, precision: 'month' });
  });

  it.each<[string, Partial<NewDog> | Record<string, unknown>, string, RegExp]>([
    ['a number typed differently', { identifier: typed('999000000000251', '999000000000281') }, 'identifier.again', /Digit 14 differs: 5 and then 8/],
    ['a number typed once', { identifier: { kind: 'transponder', value: '999000000000251', how: 'typedTwice' } }, 'identifier.again', /second time/],
    ['a number too short', { identifier: typed('99900000000025', '99900000000025') }, 'identifier.value', /15 digits; this has 14/],
    ['an empty tattoo', { identifier: { kind: 'tattoo', value: ' ', how: 'scanned' } }, 'identifier.value', /Scan the dog/],
    ['a birth to come', { birth: { earliest: '2026-11-26', latest: '2026-11-26', precision: 'day' } }, 'birth.earliest', /still to come/],
    ['a birth the wrong way round', { birth: { earliest: '2025-10-04', latest: '2025-10-03', precision: 'estimate' } }, 'birth.latest', /before the earliest/],
    ['a day that does not exist', { birth: { earliest: '2025-02-30', latest: '2025-03-02', precision: 'estimate' } }, 'birth.earliest', /in the calendar/],
    ['a known day that is two days', { birth: { earliest: '2025-10-03', latest: '2025-10-04', precision: 'day' } }, 'birth.latest', /one day/],
    ['a slip in the year', { birth: { earliest: '0225-10-03', latest: '2025-10-03', precision: 'estimate' } }, 'birth.earliest', /A day is written like/],
    ['a name too long', { name: 'x'.repeat(201) }, 'name', /At most 200/],
    ['a name with a zero sign', { name: 'Il\0ka' }, 'name', /cannot be kept/],
    ['a name that is a number', { name: 7 }, 'name', /./],
    ['an unknown owner', { owner: { person: randomUUID() } }, 'owner.person', /not in your register/],
    ['a new owner without a name', { owner: { new: { name: '' } } }, 'owner.new.name', /name is needed/],
    ['an owner who is to get mail and has no address for it', { owner: { new: { name: 'Osk Ferrand' } } }, 'owner.new.email', /mail address is needed/],
  ])('with %s is refused beside the field, and nothing is written', async (_what, more, path, words) => {
    const before = await dogCount();
    await expect(make(more as Partial<NewDog>)).rejects.toMatchObject({ code: 'BAD_INPUT', more: { fields: [expect.objectContaining({ path, message: expect.stringMatching(words) })] } });
    expect(await dogCount()).toBe(before);
  });

  it('of another practice’s person is refused as if nobody were there', async () => {
    const theirs = await createDog(ground.deps, ground.quay.manager, aDog({ identifier: anotherNumber() }));
    await expect(make({ owner: { person: theirs.people[0]!.person.id } })).rejects.toMatchObject({ code: 'BAD_INPUT', message: 'This person is not in your register.' });
  });

  it('is not entered by a reader', async () => {
    await expect(createDog(ground.deps, { ...ground.weir.desk, roles: ['reader'] }, aDog())).rejects.toMatchObject({ code: 'NOT_YOUR_ROLE' });
  });
});

describe('a dog’s dated lists', () => {
  it('keep the old name when there is a new one', async () => {
    const dog = await make();
    const renamed = await renameDog(ground.deps, ground.weir.nurse, dog.id, { name: 'Ilka of the Weir', from: '2026-11-20' });
    expect(renamed.name).toBe('Ilka of the Weir');
    expect(renamed.names.map((n) => n.name)).toEqual(['Ilka of the Weir', 'Ilka vom Talgrund']);
    await expect(renameDog(ground.deps, ground.weir.nurse, dog.id, { name: 'Ilka', from: '2026-11-20' })).rejects.toMatchObject({ code: 'BAD_INPUT' });
    await expect(renameDog(ground.deps, ground.weir.nurse, dog.id, { name: 'Ilka', from: '2026-11-26' })).rejects.toMatchObject({ code: 'BAD_INPUT', message: expect.stringMatching(/still to come/) });
  });

  it('end a number on the day the next one starts, and tell the orders in the same transaction', async () => {
    const dog = await make();
    const told: string[] = [];
    const changed = await addIdentifier(ground.deps, ground.weir.nurse, dog.id, { ...anotherNumber(), from: TODAY }, async (tx, id) => {
      told.push(...(await tx.dogIdentifier.findMany({ where: { dogId: id, until: null } })).map((i) => i.value));
    });
    expect(changed.identifiers.map((i) => i.until)).toEqual(expect.arrayContaining([null, TODAY]));
    expect(told).toEqual([changed.identifiers.find((i) => i.until === null)!.value]);
  });

  it('stay as they are when telling the orders goes wrong', async () => {
    const dog = await make();
    const broken = addIdentifier(ground.deps, ground.weir.nurse, dog.id, { ...anotherNumber(), from: TODAY }, () => Promise.reject(new Error('an order broke')));
    await expect(broken).rejects.toThrow('an order broke');
    expect((await readDog(ground.deps, ground.weir.desk, dog.id)).identifiers).toEqual(dog.identifiers);
  });

  it('take no number that this dog or another one carries', async () => {
    const [one, other] = [await make(), await make({ callName: 'Nettle' })];
    const again = (dog: Dog, value: string) => addIdentifier(ground.deps, ground.weir.nurse, dog.id, { kind: 'transponder', value, how: 'scanned', from: TODAY });
    await expect(again(one, other.identifiers[0]!.value)).rejects.toMatchObject({ code: 'ALREADY_THERE', message: expect.stringContaining(`Nettle (${other.animalId})`) });
    await expect(again(one, one.identifiers[0]!.value)).rejects.toMatchObject({ code: 'ALREADY_THERE', message: expect.stringContaining('this dog already') });
  });

  it('say who was what from when to when', async () => {
    const dog = await make();
    const person = dog.people[0]!.person.id;
    const breeder = await addPersonRole(ground.deps, ground.weir.desk, dog.id, { person, role: 'payer', from: '2026-11-01' });
    expect(breeder.people.map((p) => p.role)).toEqual(['payer', 'owner']);
    await expect(addPersonRole(ground.deps, ground.weir.desk, dog.id, { person, role: 'payer', from: '2026-11-02' })).rejects.toMatchObject({ code: 'ALREADY_THERE' });
    const ended = await addPersonRole(ground.deps, ground.weir.desk, dog.id, { person, role: 'payer', from: '2026-11-01', until: '2026-11-24' });
    expect(ended.people.find((p) => p.role === 'payer')).toMatchObject({ from: '2026-11-01', until: '2026-11-24' });
    await expect(addPersonRole(ground.deps, ground.weir.desk, dog.id, { person, role: 'agent', from: '2026-11-10', until: '2026-11-01' })).rejects.toMatchObject({ code: 'BAD_INPUT' });
  });
});

describe('another practice’s dog', () => {
  it('is answered as not there, like no dog at all', async () => {
    const dog = await make();
    for (const id of [dog.id, randomUUID(), 'no id', undefined as unknown as string]) {
      await expect(readDog(ground.deps, ground.quay.manager, id)).rejects.toMatchObject({ code: 'NOT_FOUND' });
      await expect(renameDog(ground.deps, ground.quay.manager, id, { name: 'Mine', from: TODAY })).rejects.toMatchObject({ code: 'NOT_FOUND' });
      await expect(addIdentifier(ground.deps, ground.quay.manager, id, { ...anotherNumber(), from: TODAY })).rejects.toMatchObject({ code: 'NOT_FOUND' });
      await expect(addPersonRole(ground.deps, ground.quay.manager, id, { person: dog.people[0]!.person.id, role: 'owner', from: TODAY })).rejects.toMatchObject({ code: 'NOT_FOUND' });
    }
  });

  it('is read, and not changed, where an order was referred to', async () => {
    const dog = await make();
    await ground.everywhere(async (tx) => {
      const order = await tx.order.create({ data: { id: randomUUID(), practiceId: ground.weir.id, accession: `AR26-${dog.animalId}`, dogId: dog.id } });
      await tx.orderAccess.create({ data: { orderId: order.id, practiceId: ground.quay.id, why: 'referral' } });
    });
    expect(await readDog(ground.deps, ground.quay.manager, dog.id)).toEqual(dog);
    expect((await listDogs(ground.deps, ground.quay.manager, { q: dog.animalId })).rows.map((r) => r.id)).toEqual([dog.id]);
    await expect(renameDog(ground.deps, ground.quay.manager, dog.id, { name: 'Mine', from: TODAY })).rejects.toMatchObject({ code: 'NOT_YOUR_ROLE' });
  });
});

describe('the list of dogs', () => {
  it('finds by name with a slip, by number, by owner and by phone, and writes down who was seen', async () => {
    const dog = await make({ name: 'Brunhilde zur Aue', callName: 'Brunhilde', identifier: { kind: 'transponder', value: '999123456789012', how: 'scanned' }, owner: { new: { name: 'Kaspar Lund-Ashe', phone: '0470 44 71', channel: 'none', language: 'en' } } });
    for (const q of ['brunhilde', 'Brunhidle', 'zur Aue', '999 1234 5678 9012', '789012', 'Lund-Ashe', 'Kasper Lund', '0470 4471', dog.animalId.toLowerCase()]) {
      expect([q, (await listDogs(ground.deps, ground.weir.desk, { q })).rows[0]]).toEqual([q, { id: dog.id, name: 'Brunhilde zur Aue', callName: 'Brunhilde', breed: 'Karsby Spitz', sex: 'female', born: '2025-10-03', transponder: '999 123 456 789 012', owner: 'Kaspar Lund-Ashe', phone: '0470 44 71' }]);
    }
    const looks = await ground.everywhere((tx) => tx.audit.findMany({ where: { action: 'listDogs', by: ground.weir.desk.id } }));
    expect(JSON.stringify(looks.at(-1)!.detail)).toContain(dog.id);
    expect(JSON.stringify(looks.map((l) => l.detail))).not.toContain('Lund');
    expect((await listDogs(ground.deps, ground.quay.manager, { q: 'Brunhilde' })).rows).toEqual([]);
    expect((await listDogs(ground.deps, ground.weir.desk, { q: 'Qwxz' })).rows).toEqual([]);
  });

  it('comes in pages of 50 by call name', async () => {
    const owner = { person: (await make()).people[0]!.person.id };
    for (let i = 0; i < 51; i++) await make({ owner });
    const first = await listDogs(ground.deps, ground.weir.desk);
    const second = await listDogs(ground.deps, ground.weir.desk, { page: 2 });
    expect([first.rows.length, first.more, second.more]).toEqual([50, true, false]);
    expect(new Set([...first.rows, ...second.rows].map((r) => r.id)).size).toBe(50 + second.rows.length);
    expect(first.rows[0]!.callName).toBe('Brunhilde');
  });

  it.each([0, 1.5, Number.NaN, 1e9])('refuses page %d', async (page) => {
    await expect(listDogs(ground.deps, ground.weir.desk, { page })).rejects.toMatchObject({ code: 'BAD_INPUT' });
  });

  it('refuses a question as long as a book', async () => {
    await expect(listDogs(ground.deps, ground.weir.desk, { q: 'x'.repeat(101) })).rejects.toMatchObject({ code: 'BAD_INPUT' });
  });
});
