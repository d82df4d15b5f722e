import { readMoney } from './money.js';

describe('money as typed', () => {
  it('is read with a point, a comma, spaces or no decimals', () => {
    expect(readMoney('500')).toBe(50_000);
    expect(readMoney('328.64')).toBe(32_864);
    expect(readMoney('1 200,5')).toBe(120_050);
    expect(readMoney('0')).toBe(0);
  });

  it('is refused when it is no amount, so that a comma between thousands never becomes a point', () => {
    for (const written of ['', '-5', 'lots', '1,000', '1.005', '1.2.3', '1e3']) expect(readMoney(written)).toBeUndefined();
  });
});
