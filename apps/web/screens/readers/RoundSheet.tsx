import { useMutation } from '@tanstack/react-query';
import { roundAsked, type Round, type RoundAsked } from '#libs/contracts/readers';
import { post } from '../../api/client.js';
import { Select } from '../../design/Select.js';
import { Sheet } from '../../design/Sheet.js';
import { TextField } from '../../design/TextField.js';
import { EntryForm } from '../../entry/EntryForm.js';
import { useEntry } from '../../entry/use-entry.js';
import { t } from '../../words/t.js';
import { Graded } from './Graded.js';
import { Measured } from './Measured.js';
import { useStudies } from './use-studies.js';

/** A round in which readers read the same films: pasted, answered, and not kept. */
export function RoundSheet() {
  const ask = useMutation({ mutationFn: (body: RoundAsked) => post<Round>('/scheme/reading-round', body) });
  const entry = useEntry(roundAsked);
  const submit = () => {
    const body = entry.check();
    if (body) ask.mutate(body, { onError: entry.mark });
  };
  return (
    <Sheet title={t('How well readers agree')}>
      <p>{t('Paste a table of a reading round: a line for each film, a column for each reader. Names are not needed and nothing is kept.')}</p>
      <EntryForm label={t('Show how well they agree')} onSubmit={submit} tries={entry.tries} errors={entry.errors} failure={ask.error} busy={ask.isPending}>
        <Select label={t('Study')} {...entry.field('protocol')} options={useStudies()} />
        <TextField label={t('Readings')} {...entry.field('table')} lines={8} help={t('Parted by tabs, semicolons or spaces. Only films that every reader read.')} autoComplete="off" />
      </EntryForm>
      {ask.data && <div aria-live="polite">{ask.data.kind === 'measured' ? <Measured round={ask.data} /> : <Graded round={ask.data} />}</div>}
    </Sheet>
  );
}
