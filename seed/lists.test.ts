import { findProtocol, currentProtocols } from '#libs/science/protocols/catalogue';
import { oldEnough } from '#libs/science/age';
import { parseTransponder } from '#libs/science/identifiers/transponder';
import { countText, fleschKincaidGrade, readingAge } from '#libs/documents/readability';
import { splitText } from '#libs/steps/recovery/going-home-snapshot';
import { demoSignIns as shape } from '#libs/contracts/session';
import { newText, prices } from '#libs/contracts/register';
import { breeds, schemeBreeds, studBookOf, veryLarge } from './breeds.js';
import { centres } from './centre.js';
import { country, freeDays } from './country.js';
import { dogs, transponderOf } from './dogs.js';
import { owners } from './owners.js';
import { practices } from './practices.js';
import { bornOf } from './register-dogs.js';
import { readings } from './roads/centre.js';
import { plans } from './scenario.js';
import { DemoDays } from './scenario/demo-days.js';
import { demoSignIns } from './sign-ins.js';
import { texts } from './texts.js';
import { checkReading } from '#libs/science/protocols/check-reading';
import type { JointReading } from '#libs/science/protocols/types';

describe('the invented country', () => {
  it('pays in money that stands in no list', () => {
    expect(country.currency).toMatch(/^[A-Z]{3}$/);
    expect(Intl.supportedValuesOf('currency')).not.toContain(country.currency);
    for (const practice of practices) expect(prices.parse(practice.prices).currency).toBe(country.currency);
  });

  it('knows its free days for the years around', () => {
    expect(freeDays(2026)).toHaveLength(12);
    expect(freeDays(2026)).toContain('2027-09-21');
  });

  it('sends mail to nobody real', () => {
    const mails = [...demoSignIns().map((s) => s.email), ...owners.flatMap((o) => (o.mail ? [o.mail] : []))];
    for (const mail of mails) expect(mail).toMatch(/^[a-z]+@[a-z]+\.example$/);
    expect(new Set(mails).size).toBe(mails.length);
  });
});

describe('the people who sign in', () => {
  it('are listed in the form that the server serves', () => {
    expect(shape.safeParse(demoSignIns()).success).toBe(true);
  });

  it('hold every role', () => {
    expect(new Set(demoSignIns().flatMap((s) => s.roles))).toEqual(new Set(['desk', 'nurse', 'radiographer', 'vet', 'manager', 'lead', 'reader']));
  });

  it('leave one practice without an accredited operator', () => {
    expect(practices.filter((p) => p.accredited.length === 0).map((p) => p.key)).toEqual(['sorn']);
  });
});

describe('the dogs', () => {
  it('have numbers of their own that no country or maker gives out', () => {
    const numbers = dogs.map((dog) => parseTransponder(transponderOf(dog)));
    expect(numbers.every((n) => n.kind === 'test')).toBe(true);
    expect(new Set(numbers.map((n) => n.digits)).size).toBe(dogs.length);
  });

  it('have one name each, a breed of the scheme and people of one practice', () => {
    expect(new Set(dogs.map((d) => d.call)).size).toBe(dogs.length);
    for (const dog of dogs) {
      expect(breeds).toContain(dog.breed);
      const people = [dog.owner, dog.coOwner, dog.breeder].filter((name) => name !== undefined).map((name) => owners.find((o) => o.name === name));
      expect(people.every((p) => p !== undefined && p.practice === people[0]!.practice)).toBe(true);
    }
  });

  it('are litter mates where sire, dam and age say so', () => {
    const litter = dogs.filter((d) => d.dam === 'Merle of Eel Weir');
    expect(litter.map((d) => d.call)).toEqual(['Alder', 'Ember', 'Sedge']);
    expect(new Set(litter.map((d) => d.ageDays)).size).toBe(1);
  });

  it.each(plans.map((plan) => [plan.dog, plan] as const))('%s is old enough for its studies on the day', (call, plan) => {
    const days = new DemoDays(new Date('2026-11-25T09:27:00Z'), country.zone);
    const dog = dogs.find((d) => d.call === call)!;
    const day = 'lane' in plan.visit ? days.today : days.day(plan.visit.inDays);
    for (const [code, centre] of plan.studies) {
      const protocol = currentProtocols().find((p) => p.code === code)!;
      expect(oldEnough(protocol, dog.breed, bornOf(dog, days.today), day, schemeBreeds.older?.[code])).toMatchObject({ ok: true });
      expect(centres.find((c) => c.key === centre)!.protocols).toContain(code);
    }
  });

  it('come under two protocols of loaded views', () => {
    const codes = new Set(plans.flatMap((plan) => plan.studies.map(([code]) => code)));
    expect([...codes]).toEqual(expect.arrayContaining(['hipLaxity', 'hipLoaded']));
  });
});

describe('the breeds', () => {
  it('are eight, with a stud book each, two of them older for the extended view', () => {
    expect(breeds).toHaveLength(8);
    expect(new Set(breeds.map(studBookOf)).size).toBe(8);
    expect(schemeBreeds.older?.hipExtended?.[0]).toMatchObject({ breeds: veryLarge, youngest: { months: 18 } });
  });
});

describe('the readings', () => {
  it.each(Object.entries(readings))('of %s are such as the protocol takes without a question', (code, joints) => {
    const newest = currentProtocols().find((p) => p.code === code)!;
    expect(checkReading(findProtocol(code, newest.version)!, joints as JointReading[])).toEqual([]);
  });
});

describe('the approved texts', () => {
  it('are texts that a practice could have entered itself', () => {
    for (const text of texts) expect(newText.safeParse(text).success).toBe(true);
  });

  it.each(texts.filter((t) => t.kind === 'goingHome').map((t) => [t.title, t.body]))('%s: tells the three things of the going-home sheet', (_, body) => {
    const parts = splitText(body);
    for (const part of Object.values(parts)) expect(part.length).toBeGreaterThan(60);
  });

  it.each(texts.filter((t) => t.language !== 'de').map((t) => [t.title, t.body]))('%s: no dose, and a reading age of 12 or under', (_, body) => {
    expect(body).not.toMatch(/\d\s*(mg|µg|ml)\b/i);
    const blocks = body.split(/\n+/).filter((line) => !line.startsWith('#'));
    expect(readingAge(fleschKincaidGrade(countText(blocks)))).toBeLessThanOrEqual(12);
  });
});
