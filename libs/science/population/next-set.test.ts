import fc from 'fast-check';
import { nextSet, type Member } from './next-set.js';

const dogs = (n: number, from = 0): Member[] => Array.from({ length: n }, (_, i) => ({ dog: `d${from + i}`, reading: 'r' }));
const lot = (dog: string) => dog;
const set = (now: Member[], before?: Member[]) => nextSet(now, before, lot);

it('freezes nothing below five dogs', () => {
  expect(set(dogs(4))).toEqual({ kind: 'waits', why: 'tooFew' });
  expect(set(dogs(5))).toMatchObject({ kind: 'frozen', added: 5 });
});

it('keeps the set in force while nothing, or too little, is new', () => {
  expect(set(dogs(30), dogs(30))).toEqual({ kind: 'waits', why: 'unchanged' });
  expect(set(dogs(34), dogs(30))).toEqual({ kind: 'waits', why: 'tooFewChanged' });
  expect(set(dogs(27), dogs(30))).toEqual({ kind: 'waits', why: 'tooFewChanged' });
  expect(set(dogs(35), dogs(30))).toMatchObject({ kind: 'frozen', added: 5, removed: 0, satOut: 0 });
});

it('hides a dog that has left among four that sit out', () => {
  const next = set(dogs(39, 1), dogs(30));
  expect(next).toMatchObject({ kind: 'frozen', added: 10, removed: 5, satOut: 4 });
  expect(next.kind === 'frozen' && next.members.some(({ dog }) => dog === 'd0')).toBe(false);
});

it('takes an amended reading as one that left and one that came', () => {
  const amended = [{ dog: 'd0', reading: 'second' }, ...dogs(29, 1)];
  expect(set(amended, dogs(30))).toEqual({ kind: 'waits', why: 'tooFewChanged' });
  const next = set([...amended, ...dogs(5, 40)], dogs(30));
  expect(next).toMatchObject({ kind: 'frozen', added: 6, removed: 5 });
});

it('never lets two sets that follow one another differ by one to four dogs in either direction', () => {
  const herd = fc.uniqueArray(fc.integer({ min: 0, max: 60 }), { maxLength: 60 }).map((ids) => ids.map((id): Member => ({ dog: `d${id}`, reading: `r${id % 2}` })));
  fc.assert(
    fc.property(fc.array(fc.tuple(herd, fc.boolean()), { maxLength: 6 }), (history) => {
      let before: Member[] | undefined;
      for (const [now, amend] of history) {
        const next = set(amend ? now.map((m) => ({ ...m, reading: `${m.reading}'` })) : now, before);
        if (next.kind !== 'frozen') continue;
        const keys = (members: Member[]) => new Set(members.map((m) => `${m.dog} ${m.reading}`));
        const [old, fresh] = [keys(before ?? []), keys(next.members)];
        const came = [...fresh].filter((k) => !old.has(k)).length;
        const left = [...old].filter((k) => !fresh.has(k)).length;
        for (const n of [came, left]) expect(n === 0 || n >= 5).toBe(true);
        before = next.members;
      }
    }),
  );
});
