import { flows } from './study-steps.js';

describe('where the studies stand', () => {
  it('keeps the order of the road, leaves out what is empty, and sets apart what left it', () => {
    const [flow] = flows([{ protocol: 'Hips', step: 'reported', count: 31 }, { protocol: 'Hips', step: 'asked', count: 6 }, { protocol: 'Hips', step: 'sent', count: 0 }, { protocol: 'Hips', step: 'rejected', count: 2 }]);
    expect(flow?.along.map((s) => `${s.count} ${s.words}`)).toEqual(['6 asked for', '31 reported']);
    expect(flow?.beside).toEqual([{ words: 'sent back by the reader', count: 2 }]);
  });

  it('loses no study at a step it has no words for', () => {
    expect(flows([{ protocol: 'Hips', step: 'elsewhere', count: 4 }])[0]?.beside).toEqual([{ words: 'elsewhere', count: 4 }]);
  });
});
