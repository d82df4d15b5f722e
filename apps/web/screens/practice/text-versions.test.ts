import type { PracticeText } from '#libs/contracts/register';
import { textLines } from './text-versions.js';

const text = (more: Partial<PracticeText>): PracticeText => ({ id: '00000000-0000-4000-8000-000000000001', kind: 'advice', title: 'Before', forDogs: 'every dog', body: '', language: 'en', version: '1', approvedBy: 'Ruan Tiedt', approvedAt: '2026-01-01T10:00:00Z', ...more });

describe('the approved texts of a practice', () => {
  it('puts the version approved last in force and keeps the ones before it', () => {
    const [line] = textLines([text({ version: '1' }), text({ version: '10', approvedAt: '2026-09-01T10:00:00Z' }), text({ version: '9', approvedAt: '2026-03-01T10:00:00Z' })]);
    expect(line?.inForce.version).toBe('10');
    expect(line?.before.map((t) => t.version)).toEqual(['9', '1']);
  });

  it('keeps texts for other dogs, in other languages and of other kinds apart', () => {
    expect(textLines([text({}), text({ forDogs: 'pups' }), text({ language: 'de' }), text({ kind: 'goingHome' })])).toHaveLength(4);
  });
});
