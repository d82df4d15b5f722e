import type { GroupOptions } from '#libs/contracts/group-booking';
import { emptyGroup, gapsIn, groupOf, timesOf, type GroupDraft } from './group-draft.js';

const named = (id: string) => ({ id, name: id });
const slot = (start: string) => ({ day: '2026-12-01', start, minutes: 45, room: named('r'), operator: named('o'), nurse: named('n'), vet: named('v') });
const dog = (id: string, problems: GroupOptions['dogs'][number]['problems'] = []) => ({ dog: id, name: id, registered: id, sex: 'male' as const, born: '2026-08-11', transponder: '', dam: null, problems });
const tooYoung = [{ code: 'TOO_YOUNG', words: 'Too young.', earliestDate: '2026-12-02' }];
const options: GroupOptions = {
  day: '2026-12-01', dogs: [dog('a', tooYoung), dog('b'), dog('c')], studies: [], slots: [slot('08:00'), slot('08:45'), slot('09:30')], estimate: { lines: [], total: { amountMinor: 100, currency: 'MRK' } }, questions: [], advice: [],
  people: [{ id: 'p', name: 'P', roles: ['owner'], email: null }],
};
const full: GroupDraft = { ...emptyGroup, dogs: ['a', 'b', 'c'], day: '2026-12-01', studies: [{ protocol: 'hipLaxity', version: '1', centre: 'x' }], caller: 'p', payer: 'p', addressees: [{ person: 'p', channel: 'post' }] };
const TODAY = '2026-11-25';
const starts = (draft: GroupDraft) => draft.dogs.map((d) => timesOf(draft, options).get(d)?.start);

describe('several dogs being talked through', () => {
  it('follow one another, and one that is too young takes no time from another', () => {
    expect(starts(full)).toEqual(['09:30', '08:00', '08:45']);
  });

  it('keep a time that was chosen by hand; the others go round it', () => {
    expect(starts({ ...full, starts: { c: '08:00' } })).toEqual(['09:30', '08:45', '08:00']);
  });

  it('are too many for a day that has too few times', () => {
    const gaps = gapsIn(full, { ...options, slots: options.slots.slice(0, 2) }, TODAY);
    expect(gaps).toEqual([{ path: 'times', says: '2 times are free on this day, for 3 dogs. Choose another day, or take dogs off.' }]);
  });

  it('need a person that belongs to all of them', () => {
    expect(gapsIn({ ...full, caller: undefined }, { ...options, people: [] }, TODAY).map((g) => g.path)).toEqual(['caller']);
  });

  it('are a whole litter only when all that live are named', () => {
    const litter = { ...full, isLitter: true, whole: true, born: 5, alive: 4 };
    expect(gapsIn(litter, options, TODAY).map((g) => g.path)).toEqual(['whole']);
    expect(groupOf({ ...litter, alive: 3 }, 'k', (d) => d, options)).toMatchObject({ litter: { whole: true, born: 5, alive: 3 }, dogs: [{ dog: 'a' }, { dog: 'b' }, { dog: 'c' }] });
  });
});
