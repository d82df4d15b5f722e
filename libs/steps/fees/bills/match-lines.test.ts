import type { StudyAt } from './find-study.js';
import { keyOf, matchLines, type LineToMatch } from './match-lines.js';

// Invented orders, centres and amounts.
const study = (n: number, more: Partial<StudyAt> = {}): StudyAt => ({
  study: `s${n}`, order: `o${n}`, accession: `WS26-0000${n}-A`, dog: `Dog ${n}`, protocol: 'elbow', name: 'Elbows', centre: 'c1', centreName: 'Readers', feeMinor: 5800, sentOn: '2026-11-02', readOn: null, packages: [`P-00${n}`], ...more,
});
const line = (id: string, reference: string, more: Partial<LineToMatch> = {}): LineToMatch => ({ id, centre: 'c1', reference, study: 'Elbows', amountMinor: 5800, said: null, ...more });
const states = (lines: LineToMatch[], studies: StudyAt[]) => [...matchLines(lines, studies)].map(([id, m]) => [id, m.state === 'unmatched' ? m.why : m.state, m.of?.study ?? null]);

describe('a line of a bill', () => {
  it('is for the study of the order number and the study’s name, however they are written', () => {
    for (const reference of ['WS26-00001-A', 'ws26 00001 a', 'P-001', 'p001'])
      for (const name of ['elbow', 'ELBOWS', 'Elbow grading']) expect([reference, name, states([line('a', reference, { study: name })], [study(1), study(2)])]).toEqual([reference, name, [['a', 'matched', 's1']]]);
  });

  it('says why it fits nothing: unknown number, a study that the order has not, never sent, sent to another centre', () => {
    expect(states([line('a', 'WS26-00009-A')], [study(1)])).toEqual([['a', 'unknownNumber', null]]);
    expect(states([line('a', 'WS26-00001-A', { study: 'Hips, laxity' })], [study(1)])).toEqual([['a', 'otherStudy', null]]);
    expect(states([line('a', 'WS26-00001-A', { study: 'knees' })], [study(1)])).toEqual([['a', 'otherStudy', null]]);
    expect(states([line('a', 'WS26-00001-A')], [study(1, { sentOn: null })])).toEqual([['a', 'neverSent', 's1']]);
    expect(states([line('a', 'WS26-00001-A')], [study(1, { centre: 'c2' })])).toEqual([['a', 'neverSent', 's1']]);
  });

  it('for a study that is billed already, or with another amount than was agreed, is for nothing', () => {
    expect(states([line('a', 'P-001'), line('b', 'WS26-00001-A')], [study(1)])).toEqual([['a', 'matched', 's1'], ['b', 'alreadyBilled', 's1']]);
    expect(matchLines([line('a', 'P-001'), line('b', 'P-001')], [study(1)]).get('b')).toMatchObject({ takenBy: 'a' });
    expect(states([line('a', 'P-001', { amountMinor: 5900 })], [study(1)])).toEqual([['a', 'otherAmount', 's1']]);
  });

  it('with another amount leaves the study to the next one', () => {
    expect(states([line('a', 'P-001', { amountMinor: 1 }), line('b', 'P-001')], [study(1)])).toEqual([['a', 'otherAmount', 's1'], ['b', 'matched', 's1']]);
  });

  it('finds the second of two equal studies of an order when the first is billed', () => {
    const twice = [study(1), study(1, { study: 's1b' })];
    expect(states([line('a', 'WS26-00001-A'), line('b', 'WS26-00001-A')], twice)).toEqual([['a', 'matched', 's1'], ['b', 'matched', 's1b']]);
  });

  it('that a person gave a study keeps it, whatever it says and whenever it came', () => {
    const lines = [line('a', 'P-001'), line('b', 'no number', { amountMinor: 1, said: { says: 'matched', study: 's1' } })];
    expect(states(lines, [study(1)])).toEqual([['b', 'matched', 's1'], ['a', 'alreadyBilled', 's1']]);
    expect(matchLines(lines, [study(1)]).get('b')).toMatchObject({ byHand: true });
  });

  it('that is disputed takes the study from no other', () => {
    expect(states([line('a', 'P-001', { said: { says: 'disputed', words: 'Not read.' } }), line('b', 'P-001')], [study(1)])).toEqual([['a', 'disputed', 's1'], ['b', 'matched', 's1']]);
  });
});

describe('over many bills made by chance', () => {
  /** A small generator with a seed, so that a failure can be seen again. */
  const chance = (seed: number) => () => ((seed = (seed * 1_103_515_245 + 12_345) % 2_147_483_648) / 2_147_483_648);

  it.each(Array.from({ length: 60 }, (_, i) => i + 1))('every line has one state, no study is billed twice, and the parts make the bill (seed %i)', (seed) => {
    const next = chance(seed);
    const of = <T>(all: readonly T[]): T => all[Math.floor(next() * all.length)]!;
    const studies = Array.from({ length: 6 }, (_, i) => study(i + 1, { protocol: of(['elbow', 'hipLaxity']), centre: of(['c1', 'c2']), sentOn: of(['2026-11-02', '2026-11-03', null]) }));
    const lines = Array.from({ length: 14 }, (_, i) => line(`l${i}`, of([...studies.map((s) => s.accession), ...studies.map((s) => s.packages[0]!), 'WS26-99999-A']), {
      centre: of(['c1', 'c2']), study: of(['Elbows', 'Hips, laxity', 'knees']), amountMinor: of([5800, 5800, 6000]),
      said: of([null, null, null, { says: 'matched', study: of(studies).study }, { says: 'disputed', words: 'No.' }]),
    }));
    const matched = matchLines(lines, studies);
    expect([...matched.keys()].sort()).toEqual(lines.map((l) => l.id).sort());
    const taken = lines.flatMap((l) => { const m = matched.get(l.id)!; return m.state === 'matched' ? [keyOf(l.centre, m.of.study)] : []; });
    expect(new Set(taken).size).toBe(taken.length);
    const sum = (wanted: (state: string) => boolean) => lines.filter((l) => wanted(matched.get(l.id)!.state)).reduce((all, l) => all + l.amountMinor, 0);
    expect(sum((s) => s === 'matched') + sum((s) => s !== 'matched')).toBe(sum(() => true));
    for (const l of lines) {
      const m = matched.get(l.id)!;
      if (m.state !== 'matched') continue;
      expect(m.of.centre).toBe(l.centre);
      if (!m.byHand) expect([m.of.feeMinor, m.of.sentOn === null]).toEqual([l.amountMinor, false]);
    }
    // What was not billed is free for a line that names it rightly.
    const free = studies.find((s) => s.sentOn && !taken.includes(keyOf(s.centre, s.study)));
    if (free) expect(matchLines([...lines, line('new', free.packages[0]!, { centre: free.centre, study: free.protocol })], studies).get('new')).toMatchObject({ state: 'matched', of: { study: free.study } });
  });
});
