import { numbersFrom } from '#seed/phantoms/geometry';
import { checkCharacter, hasValidCheck, hybridCheck } from '#libs/science/identifiers/iso7064';

// MOD 37,36: an integration product's help page; the same from npm @konfirm/iso7064 2.1.3.
it.each([['A12425GABC1234002', 'M'], ['123AB', 'X'], ['DADPIDA3897722461', 'J']])('MOD 37,36: %s has %s', (text, check) => {
  expect(checkCharacter(text)).toBe(check);
  expect(hasValidCheck(text + check)).toBe(true);
});

// The same rule over ten digits is MOD 11,10. 079: README of npm @konfirm/iso7064; 0794: recomputed.
it.each([['079', '2'], ['0794', '5']])('MOD 11,10: %s has %s', (text, check) => {
  expect(hybridCheck(text, 10)).toBe(check);
});

it('finds every single wrong sign and 20,409 of 20,443 exchanged neighbours, as counted on 3,000 random codes, within four binomial errors', () => {
  // Counted by another program on codes of its own, so the two shares differ by chance.
  const signs = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ';
  const random = numbersFrom(20_261_125);
  const draw = () => signs[Math.floor(36 * random())]!;
  let [swaps, found, missed] = [0, 0, 0];
  for (let code = 0; code < 3_000; code++) {
    const body = Array.from({ length: 8 }, draw).join('');
    const whole = body + checkCharacter(body);
    for (let i = 0; i < body.length - 1; i++) {
      if (whole[i] === whole[i + 1]) continue;
      swaps++;
      if (!hasValidCheck(whole.slice(0, i) + whole[i + 1]! + whole[i]! + whole.slice(i + 2))) found++;
    }
    if (code < 500) for (const other of signs) if (other !== whole[3] && hasValidCheck(whole.slice(0, 3) + other + whole.slice(4))) missed++;
  }
  expect(missed).toBe(0);
  expect(swaps - found).toBeGreaterThan(0);
  const share = 20_409 / 20_443;
  expect(Math.abs(found / swaps - share)).toBeLessThan(4 * Math.sqrt((2 * share * (1 - share)) / 20_443));
});
