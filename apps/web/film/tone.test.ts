import { asItCame, NARROWEST, shadesOf, toned, WIDEST, windowOf, type Shown } from './tone.js';

const film: Shown = { black: 1000, white: 3000, negative: false };
const grey = (shown: Shown, value: number) => new Uint8Array(shadesOf(shown, 4095).buffer)[4 * value];

describe('window and level', () => {
  it('shows a film as it came until somebody moves them', () => {
    expect(windowOf(film, asItCame)).toEqual(film);
    expect([grey(film, 0), grey(film, 1000), grey(film, 2000), grey(film, 3000), grey(film, 4095)]).toEqual([0, 0, 128, 255, 255]);
  });

  it('is brighter with more level and has more contrast with less width, about the same middle', () => {
    expect(grey(windowOf(film, toned(asItCame, 0.25, 1)), 2000)).toBeGreaterThan(180);
    const narrow = windowOf(film, toned(asItCame, 0, 0.5));
    expect(narrow).toEqual({ black: 1500, white: 2500, negative: false });
  });

  it('turns black for white, and brighter stays brighter', () => {
    const turned = { ...asItCame, turned: true };
    expect([grey(windowOf(film, turned), 1000), grey(windowOf(film, turned), 3000)]).toEqual([255, 0]);
    expect(grey(windowOf(film, toned(turned, 0.25, 1)), 2000)).toBeGreaterThan(180);
    expect(windowOf({ ...film, negative: true }, turned).negative).toBe(false);
  });

  it('can be lost neither to nothing nor to everything', () => {
    expect(toned(asItCame, 0, 1e-9).width).toBe(NARROWEST);
    expect(toned(asItCame, 99, 1e9)).toEqual({ level: 2, width: WIDEST, turned: false });
  });
});
