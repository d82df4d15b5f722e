import type { UseMutationResult } from '@tanstack/react-query';
import { useState } from 'react';
import { birthsSaid, type BirthsSaid, type BreedPicture } from '#libs/contracts/screens/breeds';
import { Checkbox } from '../../design/Checkboxes.js';
import { NumberField } from '../../design/NumberField.js';
import { TextField } from '../../design/TextField.js';
import { EntryForm } from '../../entry/EntryForm.js';
import { useEntry } from '../../entry/use-entry.js';
import { t } from '../../words/t.js';

/** A later entry corrects an earlier one of the same year, which stays to be seen. */
export function BirthsForm({ say }: { say: UseMutationResult<BreedPicture, Error, BirthsSaid> }) {
  const entry = useEntry(birthsSaid);
  const [back, setBack] = useState(false);
  const takeBack = (on: boolean | undefined) => {
    setBack(on === true);
    entry.set('born', on ? null : undefined);
  };
  const submit = () => {
    const body = entry.check();
    if (body) say.mutate(body, { onError: entry.mark });
  };
  return (
    <EntryForm label={back ? t('Take the number back') : t('Write down these births')} onSubmit={submit} tries={entry.tries} errors={entry.errors} failure={say.error} busy={say.isPending}>
      <div className="births-entry">
        <NumberField label={t('Born in the year')} {...entry.field('year')} />
        {!back && <NumberField label={t('Pups born')} value={entry.values.born ?? undefined} error={entry.error('born')} onChange={(born) => entry.set('born', born)} help={t('Of this breed, in the scheme’s country, alive or not.')} unit={t('pups')} />}
      </div>
      <TextField label={back ? t('Why it is taken back') : t('Where the number comes from')} {...entry.field('source')} help={back ? undefined : t('The book, its page and its date, so that somebody else can look.')} />
      <Checkbox label={t('No number: take back what was written down of that year')} value={back} onChange={takeBack} />
    </EntryForm>
  );
}
