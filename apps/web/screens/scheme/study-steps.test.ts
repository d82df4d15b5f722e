import { flows } from './study-steps.js';

describe('where the studies stand', () => {
  it('keeps the order of the road, leaves out what is empty, and sets apart what left it', () => {
    const [flow] = flows([{ protocol: 'Hips', step: 'Reported', count: 31 }, { protocol: 'Hips', step: 'Asked for', count: 6 }, { protocol: 'Hips', step: 'Sent', count: 0 }, { protocol: 'Hips', step: 'Sent back', count: 2 }]);
    expect(flow?.along.map((s) => `${s.count} ${s.words}`)).toEqual(['6 asked for', '31 reported']);
    expect(flow?.beside).toEqual([{ words: 'sent back by the reader', count: 2 }]);
  });

  it('loses no study at a step it has no words for', () => {
    expect(flows([{ protocol: 'Hips', step: 'Elsewhere', count: 4 }])[0]?.beside).toEqual([{ words: 'elsewhere', count: 4 }]);
  });
});
