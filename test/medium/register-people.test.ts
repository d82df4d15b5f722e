import { randomUUID } from 'node:crypto';
import { listBreeds } from '#libs/register/breeds/list-breeds';
import { createDog } from '#libs/register/dogs/create-dog';
import { amendPerson } from '#libs/register/people/amend-person';
import { createPerson } from '#libs/register/people/create-person';
import { listPeople } from '#libs/register/people/list-people';
import { search } from '#libs/register/search/search';
import { aDog, anotherNumber, twoPractices, type Ground } from './register-support/two-practices.js';

let ground: Ground;
beforeAll(async () => { ground = await twoPractices(); });
afterAll(() => ground.close());

const dora = { name: 'Dora Halden', phone: '0470 61 05', email: 'dora@mail.example' };

describe('people', () => {
  it('are found by name with a slip, by phone and by mail address, in their own practice alone', async () => {
    const made = await createPerson(ground.deps, ground.weir.desk, dora);
    for (const q of ['dora', 'Dora Haldne', '0470 6105', 'dora@mail']) expect([q, (await listPeople(ground.deps, ground.weir.desk, { q })).rows]).toEqual([q, [made]]);
    expect((await listPeople(ground.deps, ground.quay.manager, { q: 'dora' })).rows).toEqual([]);
  });

  it('are amended, and the audit names the fields and not what was in them', async () => {
    const { id } = await createPerson(ground.deps, ground.weir.desk, { name: 'Bent Harrow', phone: '0470 80 01', channel: 'none' });
    const amended = await amendPerson(ground.deps, ground.weir.desk, id, { name: 'Bent Harrow', phone: '0470 80 02', address: '4 Quay', channel: 'post' });
    expect((await listPeople(ground.deps, ground.weir.desk, { q: 'Bent Harrow' })).rows).toEqual([amended]);
    const rows = await ground.everywhere((tx) => tx.audit.findMany({ where: { subject: id }, orderBy: { id: 'asc' } }));
    expect(rows.map((r) => [r.action, r.detail])).toEqual([
      ['createPerson', { name: 'The desk' }],
      ['amendPerson', { name: 'The desk', fields: ['phone', 'address', 'channel'] }],
    ]);
  });

  it('of another practice, or nobody, are answered as not there', async () => {
    const { id } = await createPerson(ground.deps, ground.weir.desk, { name: 'Osk Ferrand', channel: 'none' });
    for (const who of [id, randomUUID(), "' OR 1=1"]) await expect(amendPerson(ground.deps, ground.quay.manager, who, { name: 'Mine', channel: 'none' })).rejects.toMatchObject({ code: 'NOT_FOUND' });
    expect((await listPeople(ground.deps, ground.weir.desk, { q: 'Osk Ferrand' })).rows[0]!.name).toBe('Osk Ferrand');
  });

  it('whose data was erased stay erased', async () => {
    const { id } = await createPerson(ground.deps, ground.weir.desk, { name: 'Ada Wist', channel: 'none' });
    await ground.everywhere((tx) => tx.person.update({ where: { id }, data: { name: 'erased', erasedAt: new Date() } }));
    await expect(amendPerson(ground.deps, ground.weir.desk, id, { name: 'Ada Wist', channel: 'none' })).rejects.toMatchObject({ code: 'NOT_AT_THIS_STEP' });
    expect((await listPeople(ground.deps, ground.weir.desk, { q: 'erased' })).rows).toEqual([]);
  });

  it.each([
    ['no way to get mail', { name: 'X Y' }, 'email'],
    ['no address for letters', { name: 'X Y', channel: 'post' }, 'address'],
    ['a mail address that is none', { name: 'X Y', email: 'x at y' }, 'email'],
    ['a name too long', { name: 'x'.repeat(201), channel: 'none' }, 'name'],
    ['a way that is none', { name: 'X Y', channel: 'pigeon' }, 'channel'],
  ])('with %s are refused beside the field', async (_what, input, path) => {
    await expect(createPerson(ground.deps, ground.weir.desk, input as never)).rejects.toMatchObject({ code: 'BAD_INPUT', more: { fields: [expect.objectContaining({ path })] } });
  });

  it('are not listed for an owner behind a link', async () => {
    await expect(listPeople(ground.deps, { ...ground.weir.desk, roles: ['owner'] }, { q: 'dora' })).rejects.toMatchObject({ code: 'NOT_YOUR_ROLE' });
  });
});

it('breeds are the scheme’s and those of the practice’s dogs, in one spelling', async () => {
  await createDog(ground.deps, ground.weir.desk, aDog({ identifier: anotherNumber(), breed: 'karsby spitz' }));
  await createDog(ground.deps, ground.weir.desk, aDog({ identifier: anotherNumber(), breed: 'Dellin Ratter' }));
  expect(await listBreeds(ground.deps, ground.weir.desk)).toEqual(['Dellin Ratter', 'Karsby Spitz', 'Marsh Mastiff']);
  expect(await listBreeds(ground.deps, ground.quay.manager)).toEqual(['Karsby Spitz', 'Marsh Mastiff']);
});

describe('the search box', () => {
  it('finds a dog by any of its marks, and an order by its number however it is typed', async () => {
    const dog = await createDog(ground.deps, ground.weir.desk, aDog({ name: 'Thistle am Wehr', callName: 'Thistle', identifier: { kind: 'transponder', value: '999222233334444', how: 'scanned' }, owner: { new: { name: 'Mirre Quist', phone: '0472 77 21', channel: 'none', language: 'en' } } }));
    const id = randomUUID();
    // AR26-00417 and its check character, by ISO 7064 MOD 37,36
    await ground.everywhere((tx) => tx.order.create({ data: { id, practiceId: ground.weir.id, accession: 'AR26-00417-9', dogId: dog.id, step: 'booked' } }));
    for (const q of ['thistel', 'am Wehr', '33334444', 'Quist', '0472 7721']) expect([q, (await search(ground.deps, ground.weir.desk, { q })).dogs[0]]).toEqual([q, { id: dog.id, name: 'Thistle, Thistle am Wehr', line: 'Karsby Spitz, female, 999 222 233 334 444, Mirre Quist, 0472 77 21' }]);
    for (const q of ['AR26-00417-9', 'ar26 oo417 9', 'AR2600417', 'ar26-004']) expect([q, (await search(ground.deps, ground.weir.desk, { q })).orders]).toEqual([q, [{ id, accession: 'AR26-00417-9', line: 'Thistle, Booked' }]]);
    for (const q of ['thistle', '33334444', 'AR26-00417-9']) expect(await search(ground.deps, ground.quay.manager, { q })).toEqual({ dogs: [], orders: [] });
    const [look] = await ground.everywhere((tx) => tx.audit.findMany({ where: { action: 'search' }, orderBy: { id: 'asc' }, take: 1 }));
    expect(look!.detail).toMatchObject({ dogs: expect.arrayContaining([dog.id]) });
  });

  it.each(['', 'x', '%', '%%', '__', '\\\\', '\0\0\0', 'AR26-00418-9', "'; DROP TABLE dog; --"])('answers %j with nothing', async (q) => {
    expect(await search(ground.deps, ground.weir.desk, { q })).toEqual({ dogs: [], orders: [] });
  });

  it('refuses what is no text', async () => {
    await expect(search(ground.deps, ground.weir.desk, { q: ['a', 'b'] as never })).rejects.toMatchObject({ code: 'BAD_INPUT' });
  });
});
