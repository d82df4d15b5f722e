import { type AgeBand, ageBandWords } from '#libs/science/population/age-band';
import { readPool } from '#libs/science/population/pool';
import { t } from '#libs/words/spoken';

/** A set's group in words. Breeds are counted in small letters, so that one breed is one. */
export function setNames({ breed, pool, ageBand }: { breed: string; pool: string; ageBand: AgeBand }): { breed: string; study: string; age: string } {
  const known = readPool(pool);
  const study = known ? `${known.protocol.name}${known.criteria ? t(', criteria of {criteria}', { criteria: known.criteria }) : ''}` : pool;
  return { breed: breed.replace(/(^|[\s-])\p{L}/gu, (first) => first.toUpperCase()), study, age: ageBandWords[ageBand] };
}
