import { evaluate } from './evaluate.js';
import { readExamples } from './examples/read.js';
import type { Fact, FactOf, FactType, Payloads } from './facts.js';
import { fact } from './examples/random-fact.js';

const { examples, rules } = readExamples();
const sent = examples.findLast(({ facts, expect: { studies } }) => (studies.s1 as { step?: string } | undefined)?.step === 'withCentre' && facts.filter(({ type }) => type === 'packageSealed').length === 1)!;
const first = sent.facts.find((one): one is FactOf<'packageSent'> => one.type === 'packageSent')!;

/** The same order, with more facts a minute apart. */
function and(...more: { [T in FactType]: [T, Payloads[T]] }[FactType][]) {
  const last = Date.parse(sent.facts.at(-1)!.at);
  const facts = more.map(([type, payload], n): Fact => fact(type, payload as never, { id: `later${n}`, at: new Date(last + (n + 1) * 60_000).toISOString() }));
  return evaluate([...sent.facts, ...facts], new Date(last + 3_600_000).toISOString(), rules).studies.s1!;
}
const codes = (study: ReturnType<typeof and>) => study.holds.map(({ code }) => code);
const here = { study: 's1', centre: first.centre };
const elsewhere = { study: 's1', centre: first.centre === 'centre-weir' ? 'centre-ford' : 'centre-weir' };
const sendAgain = { ...here, package: first.package, send: 'again', channel: 'link' };

describe('what was called back is sent anew', () => {
  it('when a study comes back to a centre that it had left', () => {
    expect(and().step).toBe('withCentre');
    expect(and(['centreChanged', elsewhere], ['centreChanged', here])).toMatchObject({ step: 'sealed', next: expect.arrayContaining(['send']) });
    expect(and(['centreChanged', elsewhere], ['centreChanged', here], ['packageSent', sendAgain]).step).toBe('sent');
    expect(and(['centreChanged', elsewhere], ['centreChanged', here], ['packageSent', sendAgain], ['acknowledged', { study: 's1', send: 'again' }]).step).toBe('withCentre');
  });

  it('when an owner who had withdrawn agrees after all, and the centre is told anew should that be withdrawn too', () => {
    const withdrawn = ['consentWithdrawn', { purpose: 'study', study: 's1' }] as const;
    const { textVersion } = sent.facts.find((one): one is FactOf<'consentGiven'> => one.type === 'consentGiven' && one.purpose === 'study')!;
    const agreed = ['consentGiven', { purpose: 'study', ...here, textVersion, answer: 'yes', signer: 'owner', signerRole: 'owner' }] as const;
    const told = ['centreTold', { study: 's1' }] as const;
    expect(codes(and([...withdrawn]))).toContain('CENTRE_TO_TELL');
    expect(codes(and([...withdrawn], [...told]))).not.toContain('CENTRE_TO_TELL');
    expect(and([...withdrawn], [...told], [...agreed]).step).toBe('sealed');
    expect(codes(and([...withdrawn], [...told], [...agreed], ['packageSent', sendAgain], [...withdrawn]))).toContain('CENTRE_TO_TELL');
  });
});

describe('a note to an archive', () => {
  const refused = ['noteOutcome', { study: 's1', note: 'n', outcome: 'refused' }] as const;
  it('that did not come through is told by a person, or comes through after all', () => {
    expect(and([...refused])).toMatchObject({ next: expect.arrayContaining(['tellOfNote']) });
    expect(codes(and([...refused]))).toContain('NOTE_NOT_TAKEN');
    expect(codes(and([...refused], ['noteOutcome', { study: 's1', note: 'n', outcome: 'arrived' }]))).not.toContain('NOTE_NOT_TAKEN');
    expect(codes(and([...refused], ['noteTold', { study: 's1', note: 'n', how: 'phone' }]))).not.toContain('NOTE_NOT_TAKEN');
    expect(codes(and([...refused], ['noteTold', { study: 's1', note: 'another', how: 'phone' }]))).toContain('NOTE_NOT_TAKEN');
  });
});
