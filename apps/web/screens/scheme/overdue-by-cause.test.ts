import { overdueByCause, type Overdue } from './overdue-by-cause.js';

const late = (cause: string | null, dueDay: string): Overdue => ({ accession: 'A1', practice: 'Weirside', centre: 'Threnfold', study: 'Hips', clock: 'result', dueDay, cause });

describe('overdue studies by cause', () => {
  it('puts the unknown cause first, then the commonest, each with its oldest study first', () => {
    const causes = overdueByCause([late('unpaid', '2026-11-12'), late('lost', '2026-11-13'), late('unpaid', '2026-11-10'), late(null, '2026-11-20')]);
    expect(causes.map((c) => [c.words, c.studies.map((s) => s.dueDay)])).toEqual([
      ['for a cause not known yet', ['2026-11-20']],
      ['unpaid', ['2026-11-10', '2026-11-12']],
      ['lost on the way', ['2026-11-13']],
    ]);
  });

  it('keeps a cause it has no words for under its own name', () => {
    expect(overdueByCause([late('flood', '2026-11-12')])[0]?.words).toBe('flood');
  });
});
