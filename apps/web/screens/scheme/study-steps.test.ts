import { flows } from './study-steps.js';

const at = (code: string, count: number) => ({ code: 'hips', protocol: 'Hips', at: code, step: `At ${code}`, count });

describe('where the studies stand', () => {
  it('keeps the order of the road, leaves out what is empty, and sets apart what left it', () => {
    const [flow] = flows([at('reported', 31), at('asked', 6), at('sent', 0), at('rejected', 2)]);
    expect(flow?.along.map((s) => `${s.count} ${s.words}`)).toEqual(['6 asked for', '31 reported']);
    expect(flow?.beside).toEqual([{ at: 'rejected', words: 'sent back by the reader', count: 2 }]);
  });

  it('loses no study at a step it has no words for', () => {
    expect(flows([at('elsewhere', 4)])[0]?.beside).toEqual([{ at: 'elsewhere', words: 'At elsewhere', count: 4 }]);
  });

  it('asks for the list behind a number by the codes of the study and the step', () => {
    const [flow] = flows([at('sent', 3)]);
    expect([flow?.code, flow?.along[0]?.at]).toEqual(['hips', 'sent']);
  });
});
