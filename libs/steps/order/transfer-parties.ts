import type { FactOf } from '#libs/pathway/facts';
import type { Work } from '../record/work.js';

export type Party = 'seller' | 'buyer';
export interface Side {
  party: Party;
  sale: FactOf<'dogTransferred'>;
  /** This side has said yes. */
  said: boolean;
  /** Both have. */
  agreed: boolean;
}

/** On which side of the dog's sale somebody stands; undefined for whoever neither sold nor bought it. */
export function partyOf({ facts }: Pick<Work, 'facts'>, person: string): Side | undefined {
  const sales = facts('dogTransferred');
  const last = sales.at(-1);
  if (!last) return undefined;
  const sold = sales.find((sale) => sellers(sale).includes(person) && sale.buyer !== person);
  const party = last.buyer === person ? 'buyer' : sold ? 'seller' : undefined;
  if (!party) return undefined;
  // Who sold it before the last sale has nothing more to say.
  const sale = party === 'buyer' ? last : sold!;
  const next = sales.find((s) => s.rec > sale.rec);
  const yes = new Set(facts('transferAgreed').filter((f) => f.rec >= sale.rec && (!next || f.rec < next.rec)).map((f) => f.party));
  return { party, sale, said: yes.has(party), agreed: yes.has('seller') && yes.has('buyer') };
}

const sellers = (sale: FactOf<'dogTransferred'>): string[] => (Array.isArray(sale.detail?.sellers) ? sale.detail.sellers.map(String) : []);
