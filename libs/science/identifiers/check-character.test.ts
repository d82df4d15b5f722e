import fc from 'fast-check';
import { type Accession, nextAccession, parseAccession } from './accession.js';
import { certificateSerial, parseCertificateSerial, SERIAL_BYTES } from './certificate-serial.js';
import { checkCharacter, hasValidCheck } from './iso7064.js';

const sign = fc.constantFrom(...'0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ');
const replaceAt = (text: string, place: number, by: string) => text.slice(0, place) + by + text.slice(place + 1);

describe('ISO 7064 MOD 37,36', () => {
  it.each([
    // An integration product's help page; the same from npm @konfirm/iso7064 2.1.3.
    ['A12425GABC1234002', 'M'],
    ['123AB', 'X'],
    ['DADPIDA3897722461', 'J'],
  ])('%s has the check character %s', (text, check) => {
    expect(checkCharacter(text)).toBe(check);
    expect(hasValidCheck(text + check)).toBe(true);
  });

  it('finds every single wrong sign', () => {
    fc.assert(fc.property(fc.array(sign, { minLength: 2, maxLength: 15 }), fc.nat(), sign, (signs, at, other) => {
      const body = signs.join('');
      const whole = body + checkCharacter(body);
      const place = at % whole.length;
      fc.pre(whole[place] !== other);
      expect(hasValidCheck(replaceAt(whole, place, other))).toBe(false);
    }));
  });

  it('refuses a sign it does not know, with its place', () => {
    expect(() => checkCharacter('12ä4')).toThrow(/Sign 3, "ä"/);
    expect(() => checkCharacter('')).toThrow(/nothing/);
  });
});

describe('order numbers', () => {
  const practice = fc.array(fc.constantFrom(...'ABCDEFGHJKLMNPQRSTUVWXYZ'), { minLength: 2, maxLength: 4 }).map((letters) => letters.join(''));
  const year = fc.integer({ min: 2000, max: 2099 });
  const last = fc.integer({ min: 0, max: 999_900 });

  it('are short, hold no I or O, and read back', () => {
    fc.assert(fc.property(practice, year, last, (letters, inYear, used) => {
      const accession = nextAccession(letters, inYear, used);
      expect(accession.text.length).toBeLessThanOrEqual(16);
      expect(accession.text).not.toMatch(/[IO]/);
      expect(accession.number).toBeGreaterThan(used);
      expect(parseAccession(accession.text)).toEqual(accession);
      expect(parseAccession(` ${accession.text.toLowerCase().replaceAll('-', '')}\n`.replace(/0/g, 'o').replace(/1/g, 'i'))).toEqual(accession);
    }));
  });

  it('leave out numbers whose check character would be O or I', () => {
    const made: Accession[] = [];
    for (let used = 0; made.length < 100; used = made.at(-1)!.number) made.push(nextAccession('AR', 2026, used));
    const left = Array.from({ length: made.at(-1)!.number }, (_, i) => i + 1).filter((n) => !made.some(({ number }) => number === n));
    expect(left.length).toBeGreaterThan(0);
    for (const number of left) expect('OI').toContain(checkCharacter(`AR26${String(number).padStart(5, '0')}`));
  });

  it('refuse a wrong sign and a wrong form with words', () => {
    const { text } = nextAccession('AR', 2026, 416);
    expect(() => parseAccession(text.replace('417', '471'))).toThrow(/does not fit/);
    expect(() => parseAccession('hello')).toThrow(/is not an order number/);
    expect(() => nextAccession('RIO', 2026, 0)).toThrow(/other than I and O/);
    expect(() => nextAccession('AR', 26, 0)).toThrow(/2000 to 2099/);
    expect(() => nextAccession('AR', 2026, 999_999)).toThrow(/used all order numbers/);
  });
});

describe('certificate serials', () => {
  const bytes = fc.uint8Array({ minLength: SERIAL_BYTES, maxLength: SERIAL_BYTES });

  it('are four groups of four without I, L, O, U, and read back as people type them', () => {
    fc.assert(fc.property(bytes, (random) => {
      const serial = certificateSerial(random);
      expect(serial).toMatch(/^([0-9A-HJKMNP-TV-Z]{4}-){3}[0-9A-HJKMNP-TV-Z]{4}$/);
      expect(parseCertificateSerial(serial)).toBe(serial);
      expect(parseCertificateSerial(serial.toLowerCase().replaceAll('-', ' ').replace(/1/g, 'l').replace(/0/g, 'o'))).toBe(serial);
    }));
  });

  it('differ when any of the first 70 random bits differs', () => {
    fc.assert(fc.property(bytes, fc.integer({ min: 0, max: 69 }), (random, bit) => {
      const other = random.slice();
      const byte = SERIAL_BYTES - 1 - Math.floor(bit / 8);
      other[byte] = other[byte]! ^ (1 << bit % 8);
      expect(certificateSerial(other).slice(0, 17)).not.toBe(certificateSerial(random).slice(0, 17));
    }));
  });

  it('refuse a wrong sign, a strange sign, a short one, and too few bytes', () => {
    const serial = certificateSerial(new Uint8Array(SERIAL_BYTES).fill(77));
    expect(() => parseCertificateSerial(replaceAt(serial, 0, serial[0] === '7' ? '8' : '7'))).toThrow(/does not fit/);
    expect(() => parseCertificateSerial(replaceAt(serial, 0, 'U'))).toThrow(/Sign 1, "U"/);
    expect(() => parseCertificateSerial(serial.slice(0, -1))).toThrow(/this has 15/);
    expect(() => certificateSerial(new Uint8Array(4))).toThrow(/10 random bytes/);
  });
});
