import { randomUUID } from 'node:crypto';
import { addAccreditation } from '#libs/register/practice/add-accreditation';
import { addCentre } from '#libs/register/practice/add-centre';
import { addEquipment } from '#libs/register/practice/add-equipment';
import { addReader, type InviteReader } from '#libs/register/practice/add-reader';
import { addRoom } from '#libs/register/practice/add-room';
import { addStaff } from '#libs/register/practice/add-staff';
import { addText } from '#libs/register/practice/add-text';
import { markEquipmentChecked } from '#libs/register/practice/mark-equipment-checked';
import { practiceScreen } from '#libs/register/practice/practice-screen';
import { setPrices } from '#libs/register/practice/set-prices';
import { passwordMatches } from '#libs/platform/passwords/password';
import { twoPractices, type Ground } from './register-support/two-practices.js';

let ground: Ground;
beforeAll(async () => { ground = await twoPractices(); });
afterAll(() => ground.close());

const password = 'river otter 7';
const consent = { kind: 'consentSedation' as const, title: 'Sedation', body: 'Your dog sleeps lightly for the pictures. Sleep always carries a small risk.' };
const prices = { currency: 'MRK', taxPercent: 10, sedationMinor: 8_000, radiographMinor: 4_000, sendingMinor: 1_000 };
const centre = { name: 'Film readers of Sluice Green', place: 'Sluice Green', email: 'films@sluice.example', zone: 'Europe/Vienna', protocols: ['elbow'] };

describe('a practice that has just been founded', () => {
  it('is told what is missing until nothing is', async () => {
    const { deps, quay } = ground;
    expect((await practiceScreen(deps, quay.manager)).missing).toEqual([
      'No vet yet. Add one under Staff.',
      'No nurse yet who watches over a sleeping dog. Add one under Staff.',
      'Nobody takes the views. Add a radiographer, or a second vet, under Staff.',
      'No X-ray room yet. Add one under Rooms.',
      'No X-ray machine with a check that is still good. Add it, or its latest check, under Equipment.',
      'No advice for the days before a visit is approved. A vet adds it under Texts.',
      'No text for the consent to sedation is approved. A vet adds it under Texts.',
      'No text for the consent to sending every film is approved. A vet adds it under Texts.',
      'No text for the use in the breed’s statistics is approved. A vet adds it under Texts.',
      'No going-home text is approved; without it no dog goes home. A vet adds it under Texts.',
      'Hips, laxity cannot be booked: no distraction device with a check that is still good. Other studies can.',
    ]);
    for (const role of ['vet', 'nurse', 'radiographer'] as const) await addStaff(deps, quay.manager, { name: `New ${role}`, email: `new-${role}@quay.example`, roles: [role], password });
    await addRoom(deps, quay.manager, { name: 'X-ray', kind: 'xray' });
    for (const kind of ['xray', 'distractionDevice'] as const) await addEquipment(deps, quay.manager, { name: kind, kind, checkedUntil: '2027-01-31' });
    const { staff } = await setPrices(deps, quay.manager, prices);
    const vet = { ...quay.manager, id: staff.find((s) => s.roles.includes('vet'))!.id, roles: ['vet' as const] };
    for (const kind of ['advice', 'goingHome', 'consentSedation', 'consentSendAll', 'consentStatistics'] as const) await addText(deps, vet, { ...consent, kind, title: kind });
    const operator = staff.find((s) => s.roles.includes('radiographer'))!.id;
    const ready = await addAccreditation(deps, quay.manager, { staff: operator, protocol: 'hipLaxity', from: '2026-11-01', until: '2027-10-31', evidence: 'Course of the scheme.' });
    expect(ready.missing).toEqual([]);
    expect(ready.accreditations).toMatchObject([{ staffName: 'New radiographer', protocolName: 'Hip laxity by stress radiography', from: '2026-11-01', until: '2027-10-31' }]);
    expect(ready.prices).toEqual(prices);
    expect(ready).toEqual(await practiceScreen(deps, quay.manager));
  });
});

describe('staff', () => {
  it('sign in with a hash that the practice cannot read', async () => {
    const screen = await addStaff(ground.deps, ground.weir.manager, { name: 'Brida Tann', email: 'Brida@weir.example', roles: ['nurse', 'nurse', 'desk'], password });
    const added = screen.staff.find((s) => s.name === 'Brida Tann')!;
    expect(added).toMatchObject({ email: 'brida@weir.example', roles: ['nurse', 'desk'], active: true });
    expect(JSON.stringify(screen)).not.toContain('argon2');
    const row = await ground.everywhere((tx) => tx.staff.findUniqueOrThrow({ where: { id: added.id } }));
    expect(await passwordMatches(password, row.passwordHash)).toBe(true);
    const audit = await ground.everywhere((tx) => tx.audit.findFirstOrThrow({ where: { subject: added.id } }));
    expect(audit).toMatchObject({ action: 'addStaff', by: ground.weir.manager.id, practiceId: ground.weir.id });
  });

  it('have one mail address each, in any practice and in whatever case it is written', async () => {
    await expect(addStaff(ground.deps, ground.quay.manager, { name: 'Twin', email: 'Desk@weir.example', roles: ['desk'], password })).rejects.toMatchObject({ code: 'ALREADY_THERE', more: { fields: [{ path: 'email' }] } });
  });

  it.each(['lead', 'reader'] as const)('are not made a %s by a practice', async (role) => {
    await expect(addStaff(ground.deps, ground.weir.manager, { name: 'Too Much', email: 'too@weir.example', roles: ['desk', role], password })).rejects.toMatchObject({ code: 'BAD_INPUT', more: { fields: [{ path: 'roles' }] } });
  });
});

describe('devices', () => {
  it('get a new check, which is written down with the old one', async () => {
    const { equipment } = await practiceScreen(ground.deps, ground.weir.manager);
    const table = equipment.find((e) => e.name === 'Table')!;
    const screen = await markEquipmentChecked(ground.deps, ground.weir.manager, table.id, { checkedUntil: '2028-06-30' });
    expect(screen.equipment.find((e) => e.id === table.id)!.checkedUntil).toBe('2028-06-30');
    const audit = await ground.everywhere((tx) => tx.audit.findFirstOrThrow({ where: { subject: table.id } }));
    expect(audit.detail).toMatchObject({ before: '2027-06-30', checkedUntil: '2028-06-30' });
    await expect(markEquipmentChecked(ground.deps, ground.weir.manager, table.id, { checkedUntil: '2026-11-24' })).rejects.toMatchObject({ code: 'BAD_INPUT' });
    for (const id of [randomUUID(), 'table']) await expect(markEquipmentChecked(ground.deps, ground.weir.manager, id, { checkedUntil: '2028-06-30' })).rejects.toMatchObject({ code: 'NOT_FOUND' });
    await expect(markEquipmentChecked(ground.deps, ground.quay.manager, table.id, { checkedUntil: '2028-07-01' })).rejects.toMatchObject({ code: 'NOT_FOUND' });
  });

  it('and rooms have one name each', async () => {
    await expect(addRoom(ground.deps, ground.weir.manager, { name: 'Room 1', kind: 'ward' })).rejects.toMatchObject({ code: 'ALREADY_THERE' });
    await expect(addEquipment(ground.deps, ground.weir.manager, { name: 'Table', kind: 'xray', checkedUntil: '2027-01-01' })).rejects.toMatchObject({ code: 'ALREADY_THERE' });
  });
});

describe('an accreditation', () => {
  const wanted = () => ({ staff: ground.weir.radiographer.id, protocol: 'hipLaxity', from: '2026-11-01', until: '2027-10-31', evidence: 'Course.' });
  it.each<[string, () => object, string]>([
    ['of nobody', () => ({ staff: randomUUID() }), 'staff'],
    ['of another practice’s staff', () => ({ staff: ground.quay.manager.id }), 'staff'],
    ['of a nurse', () => ({ staff: ground.weir.nurse.id }), 'staff'],
    ['for a study that is not installed', () => ({ protocol: 'knees' }), 'protocol'],
    ['that ends before it begins', () => ({ until: '2026-10-31' }), 'until'],
    ['on a day that does not exist', () => ({ from: '2026-02-31' }), 'from'],
    ['without evidence', () => ({ evidence: ' ' }), 'evidence'],
  ])('%s is refused', async (_what, more, path) => {
    await expect(addAccreditation(ground.deps, ground.weir.manager, { ...wanted(), ...more() })).rejects.toMatchObject({ code: 'BAD_INPUT', more: { fields: [expect.objectContaining({ path })] } });
  });
});

describe('an approved text', () => {
  it('is followed by a newer version; each kind of consent counts on over titles and languages', async () => {
    const { deps, weir } = ground;
    await addText(deps, weir.vet, consent);
    ground.clock.advance({ minutes: 1 });
    const screen = await addText(deps, weir.vet, { ...consent, title: 'Schlaf', language: 'de', body: 'Ihr Hund schläft leicht, während die Bilder entstehen.' });
    expect(screen.texts.filter((t) => t.kind === 'consentSedation').map((t) => [t.version, t.title, t.approvedBy])).toEqual([['sedation-2', 'Schlaf', 'The vet']]);
    for (const title of ['Grown dogs', 'Grown dogs', 'Young dogs']) {
      ground.clock.advance({ minutes: 1 });
      await addText(deps, weir.vet, { ...consent, kind: 'advice', title });
    }
    const { texts } = await practiceScreen(deps, weir.desk);
    expect(texts.filter((t) => t.kind === 'advice').map((t) => [t.title, t.version]).sort()).toEqual([['Grown dogs', 'advice-2'], ['Young dogs', 'advice-1']]);
    expect(await ground.everywhere((tx) => tx.approvedText.count({ where: { practiceId: weir.id, kind: 'advice' } }))).toBe(3);
  });

  it('is approved by a vet and by nobody else', async () => {
    for (const who of [ground.weir.manager, ground.weir.nurse]) await expect(addText(ground.deps, who, consent)).rejects.toMatchObject({ code: 'NOT_YOUR_ROLE' });
  });

  it('names no dose, and the refusal says which words', async () => {
    await expect(addText(ground.deps, ground.weir.vet, { ...consent, kind: 'goingHome', body: 'If it is restless, give half a tablet, or 0.3 ml/kg of the syrup.' })).rejects.toMatchObject({
      code: 'BAD_INPUT',
      message: expect.stringContaining('“0.3 ml”'),
      more: { fields: [expect.objectContaining({ path: 'body' })] },
    });
  });

  it.each([['too short', 'Sleep.'], ['too long', 'x'.repeat(10_001)]])('%s is refused', async (_what, body) => {
    await expect(addText(ground.deps, ground.weir.vet, { ...consent, body })).rejects.toMatchObject({ code: 'BAD_INPUT' });
  });
});

describe('centres and their readers', () => {
  it('are added for every practice of the scheme; a reader’s account is shut until the centre’s mail is answered', async () => {
    const invited: string[] = [];
    const invite: InviteReader = (_tx, who) => Promise.resolve(void invited.push(who.name));
    const screen = await addCentre(ground.deps, ground.weir.manager, centre);
    const added = screen.centres.find((c) => c.name === centre.name)!;
    expect(added).toMatchObject({ ...centre, ackDays: 3, resultDays: 10, holidays: [] });
    expect((await practiceScreen(ground.deps, ground.quay.manager)).centres.map((c) => c.id)).toContain(added.id);
    await addReader(ground.deps, ground.weir.manager, added.id, { name: 'Vera Castine', email: 'vera@sluice.example' }, invite);
    expect(await ground.everywhere((tx) => tx.staff.findUniqueOrThrow({ where: { email: 'vera@sluice.example' } }))).toMatchObject({ centreId: added.id, practiceId: null, roles: ['reader'], active: false });
    expect(invited).toEqual(['Vera Castine']);
    await expect(addReader(ground.deps, ground.weir.manager, added.id, { name: 'Vera Castine', email: 'VERA@sluice.example' }, invite)).rejects.toMatchObject({ code: 'ALREADY_THERE' });
    await expect(addReader(ground.deps, ground.weir.manager, randomUUID(), { name: 'No One', email: 'no@sluice.example' }, invite)).rejects.toMatchObject({ code: 'NOT_FOUND' });
  });

  it.each<[string, object, string]>([
    ['a name that is there', { name: 'READING CENTRE, Threnfold' }, ''],
    ['a zone that is none', { zone: 'Mars/Olympus' }, 'zone'],
    ['a region that is none', { region: 'XX-YY' }, 'region'],
    ['a study that is not installed', { protocols: ['knees'] }, 'protocols'],
    ['a holiday that does not exist', { holidays: ['2026-02-30'] }, 'holidays.0'],
    ['a wait of no days', { ackDays: 0 }, 'ackDays'],
  ])('with %s are refused', async (_what, more, path) => {
    await expect(addCentre(ground.deps, ground.weir.manager, { ...centre, name: 'Another', ...more })).rejects.toMatchObject(path ? { code: 'BAD_INPUT', more: { fields: [expect.objectContaining({ path })] } } : { code: 'ALREADY_THERE' });
  });
});

it('prices are in the money of the scheme, and their change is written down', async () => {
  await expect(setPrices(ground.deps, ground.weir.manager, { ...prices, currency: 'USD' })).rejects.toMatchObject({ code: 'BAD_INPUT' });
  await expect(setPrices(ground.deps, ground.weir.manager, { ...prices, sedationMinor: 80.5 })).rejects.toMatchObject({ code: 'BAD_INPUT' });
  await setPrices(ground.deps, ground.weir.manager, prices);
  const audit = await ground.everywhere((tx) => tx.audit.findFirstOrThrow({ where: { action: 'setPrices', practiceId: ground.weir.id } }));
  expect(audit.detail).toMatchObject({ before: { sedationMinor: 9_600 }, after: { sedationMinor: 8_000 } });
});

it('whoever is no manager changes nothing in the register', async () => {
  const { deps, weir } = ground;
  const attempts = [
    () => addStaff(deps, weir.desk, { name: 'X Y', email: 'x@y.example', roles: ['desk'], password }),
    () => addRoom(deps, weir.vet, { name: 'Attic', kind: 'xray' }),
    () => addEquipment(deps, weir.nurse, { name: 'Z', kind: 'xray', checkedUntil: '2027-01-01' }),
    () => markEquipmentChecked(deps, weir.nurse, randomUUID(), { checkedUntil: '2027-01-01' }),
    () => setPrices(deps, weir.desk, prices),
    () => addCentre(deps, weir.vet, { ...centre, name: 'Mine' }),
    () => addReader(deps, weir.vet, ground.centre, { name: 'X Y', email: 'x@y.example' }, () => Promise.resolve()),
  ];
  for (const attempt of attempts) await expect(attempt()).rejects.toMatchObject({ code: 'NOT_YOUR_ROLE' });
});
