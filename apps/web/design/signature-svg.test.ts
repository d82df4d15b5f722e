import { signatureSvg } from './signature-svg.js';

describe('a signature as a drawing', () => {
  it('is nothing when nothing was drawn', () => {
    expect(signatureSvg([], 300, 120)).toBeUndefined();
    expect(signatureSvg([[]], 300, 120)).toBeUndefined();
  });

  it('keeps each stroke apart, and a dot as a dot', () => {
    const svg = signatureSvg([[{ x: 1.4, y: 2.6 }, { x: 5, y: 6 }], [{ x: 9, y: 9 }]], 300, 120);
    expect(svg).toContain('d="M1 3L5 6M9 9h1"');
    expect(svg).toContain('viewBox="0 0 300 120"');
  });

  it('thins a very long signature until the server takes it, and keeps where it ends', () => {
    const long = Array.from({ length: 20_000 }, (_, i) => ({ x: i % 300, y: (i * 7) % 120 }));
    const svg = signatureSvg([[...long, { x: 299, y: 111 }]], 300, 120) ?? '';
    expect(svg.length).toBeLessThanOrEqual(40_000);
    expect(svg.length).toBeGreaterThan(10_000);
    expect(svg).toContain('L299 111"');
  });
});
