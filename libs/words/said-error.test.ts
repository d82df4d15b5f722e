import { fitCircle } from '#libs/science/measurement/fit-circle';
import { distractionIndex } from '#libs/science/measurement/distraction-index';
import { SaidError } from './said-error.js';
import { staffWordsIn } from './words.js';

const thrown = (work: () => unknown): SaidError => {
  try {
    work();
  } catch (error) {
    if (error instanceof SaidError) return error;
  }
  throw new Error('Nothing was thrown that can be told.');
};
const inBoth = (work: () => unknown) => {
  const { message, said } = thrown(work);
  return [message, staffWordsIn('de').said(said)];
};

describe('what a pure part refuses', () => {
  it('is English by itself, and German to whoever reads German, each with its forms and its decimal sign', () => {
    expect(inBoth(() => fitCircle([{ x: 1, y: 1 }]))).toEqual([
      'A circle needs three different points of its rim; there is 1. Set more.',
      'Ein Kreis braucht drei verschiedene Punkte seines Randes; es ist 1. Setzen Sie mehr.',
    ]);
    const circle = (x: number) => ({ centre: { x, y: 0 }, radius: 20, covariance: [[0, 0, 0], [0, 0, 0], [0, 0, 0]] });
    const [english, german] = inBoth(() => distractionIndex(circle(0), circle(50)));
    expect(english).toContain('lie 2.50 radii apart; above 2.00');
    expect(german).toContain('liegen 2,50 Radien auseinander; über 2,00');
  });

  it('is told as it stands where no catalogue has it', () => {
    const { message, said } = new SaidError('The studies must be a list: [ { … }, { … } ].');
    expect([message, staffWordsIn('de').said(said)]).toEqual(Array(2).fill('The studies must be a list: [ { … }, { … } ].'));
  });
});
