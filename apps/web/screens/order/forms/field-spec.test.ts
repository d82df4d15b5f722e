import { actionNames } from '#libs/contracts/actions/all';
import { fieldsOf } from './field-spec.js';

describe('the form of an action', () => {
  it('asks for a day, a reason and a choice in the words of the contract', () => {
    expect(fieldsOf('recordDeath')).toEqual([
      { name: 'day', title: 'Died on', required: true, kind: 'day' },
      { name: 'inCare', title: 'In our care', required: true, kind: 'yesNo' },
      { name: 'cause', title: 'Cause, as far as known', required: true, kind: 'lines' },
    ]);
  });

  it('takes its pick lists from the order page', () => {
    expect(fieldsOf('namePayer')).toEqual([{ name: 'payer', title: 'Who pays', required: true, kind: 'pickOne', pick: 'people' }]);
    expect(fieldsOf('confirmAddressees')[0]).toMatchObject({ kind: 'pickSome', pick: 'people' });
  });

  it('says which answers may stay empty', () => {
    expect(fieldsOf('openVisit').find((f) => f.name === 'restUntil')).toMatchObject({ required: false, title: 'Rest until (may stay empty)' });
  });

  it('can be read from every contract', () => {
    for (const action of actionNames) expect(Array.isArray(fieldsOf(action))).toBe(true);
  });
});
