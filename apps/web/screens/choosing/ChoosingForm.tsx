import type { UseMutationResult } from '@tanstack/react-query';
import { choosingAsked, type Choosing, type ChoosingAsked, type ChoosingSet } from '#libs/contracts/choosing';
import { fullDay } from '../../design/format.js';
import { NumberField } from '../../design/NumberField.js';
import { Notice } from '../../design/Notice.js';
import { Select } from '../../design/Select.js';
import { EntryForm } from '../../entry/EntryForm.js';
import { useEntry } from '../../entry/use-entry.js';
import { t } from '../../words/t.js';

const nameOf = ({ breed, study, age }: ChoosingSet) => `${breed}, ${t.language === 'en' ? study.toLowerCase() : study}, ${age}`;

export function ChoosingForm({ sets, reckon }: { sets: ChoosingSet[]; reckon: UseMutationResult<Choosing, Error, ChoosingAsked> }) {
  const entry = useEntry(choosingAsked, { dogsOf100: 40, bitchesOf100: 50 });
  const chosen = sets.find((s) => s.id === entry.values.set);
  const choose = (id: string | undefined) => {
    entry.set('set', id);
    const n = sets.find((s) => s.id === id)?.n;
    if (!n) return;
    entry.set('dogs', Math.max(1, Math.floor(n / 2)));
    entry.set('bitches', Math.max(1, Math.ceil(n / 2)));
  };
  const submit = () => {
    const body = entry.check();
    if (body) reckon.mutate(body, { onError: entry.mark });
  };
  return (
    <EntryForm label={t('Show what it would do')} onSubmit={submit} tries={entry.tries} errors={entry.errors} failure={reckon.error} busy={reckon.isPending}>
      <Select label={t('Breed and study')} value={entry.values.set} error={entry.error('set')} onChange={choose} options={sets.map((s) => ({ id: s.id, name: nameOf(s), hint: s.refused ?? t('{n} dogs, frozen {day}', { n: s.n, day: fullDay(s.frozenOn) }) }))} />
      {chosen?.refused && !entry.error('set') && <Notice>{chosen.refused}</Notice>}
      <div className="choosing-sexes">
        <NumberField label={t('Dogs to choose from')} {...entry.field('dogs')} help={t('Half of the set, until you write what is true: the set does not say who is dog and who is bitch.')} />
        <NumberField label={t('Of every 100 dogs, bred from')} {...entry.field('dogsOf100')} unit={t('of 100')} />
        <NumberField label={t('Bitches to choose from')} {...entry.field('bitches')} help={t('The other half.')} />
        <NumberField label={t('Of every 100 bitches, bred from')} {...entry.field('bitchesOf100')} unit={t('of 100')} />
      </div>
    </EntryForm>
  );
}
