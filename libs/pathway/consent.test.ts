import { Bag } from './bag.js';
import { lackOf } from './consent.js';
import type { Fact } from './facts.js';

let n = 0;
const fact = (type: 'consentGiven' | 'consentWithdrawn', more: object): Fact => {
  const at = new Date(Date.UTC(2026, 10, 25, 8, n++)).toISOString();
  return { id: `f${n}`, type, at, rec: at, by: 'x', role: 'owner', practice: 'p', purpose: 'study', study: 's1', ...more } as unknown as Fact;
};
const yes = (signer: string, more: object = {}) => fact('consentGiven', { signer, signerRole: 'owner', answer: 'yes', textVersion: '1', ...more });
const lacking = (facts: Fact[], signers: string[]) => {
  const bag = new Bag();
  facts.forEach((f) => bag.add(f));
  return lackOf('study', [bag], signers, '1');
};

describe('where each owner signs', () => {
  const both = ['ada', 'bent'];

  it('one yes names the owner who is still to be asked', () => {
    expect(lacking([yes('ada')], both)).toEqual({ lacks: 'otherOwner', owners: ['bent'] });
  });

  it('two are enough, in whatever order, and where any is enough one is', () => {
    expect(lacking([yes('bent'), yes('ada')], both)).toBeNull();
    expect(lacking([yes('bent')], [])).toBeNull();
  });

  it('a later no of one of them counts', () => {
    expect(lacking([yes('ada'), yes('bent'), yes('ada', { answer: 'no' })], both)).toEqual({ lacks: 'answer', owners: ['ada'] });
  });

  it('a yes to an older text is none', () => {
    expect(lacking([yes('ada', { textVersion: '0' }), yes('bent')], both)).toEqual({ lacks: 'otherOwner', owners: ['ada'] });
  });

  it('an agent’s yes is that of the owner who gave the authority', () => {
    expect(lacking([yes('ada'), yes('ivo', { signerRole: 'agent', authority: 'a1', for: 'bent' })], both)).toBeNull();
  });

  it('a yes that is taken back takes all back', () => {
    const facts = [yes('ada'), yes('bent'), fact('consentWithdrawn', {})];
    expect(lacking(facts, both)).toEqual({ lacks: 'withdrawn' });
    expect(lacking([...facts, yes('ada')], both)).toEqual({ lacks: 'otherOwner', owners: ['bent'] });
  });
});
