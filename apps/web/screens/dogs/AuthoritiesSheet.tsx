import { useState } from 'react';
import { authorityCovers, newAuthority } from '#libs/contracts/people';
import type { Dog } from '#libs/contracts/register';
import { useAuthorities, usePeople } from '../../api/register.js';
import { Button } from '../../design/Button.js';
import { CheckboxGroup } from '../../design/Checkboxes.js';
import { DateField } from '../../design/DateField.js';
import { fullDay, list } from '../../design/format.js';
import { ErrorBar } from '../../design/Notice.js';
import { Select } from '../../design/Select.js';
import { Sheet } from '../../design/Sheet.js';
import { TextField } from '../../design/TextField.js';
import { EntryForm } from '../../entry/EntryForm.js';
import { useEntry } from '../../entry/use-entry.js';
import { t } from '../../words/t.js';
import type { PageSentence } from '#libs/words/de/staff/page-words';
import { Told } from '../../words/Told.js';

const covered = { sedation: 'Sedation', study: 'The pictures', sendAll: 'Sending every film' } as const satisfies Record<string, PageSentence>;
const coveredInside = { sedation: 'sedation', study: 'the pictures', sendAll: 'sending every film' } as const satisfies Record<string, PageSentence>;

/** Who may say yes for an owner, to what, and until when. Without one, an agent’s yes is refused. */
export function AuthoritiesSheet({ dog }: { dog: Dog }) {
  const [open, setOpen] = useState(false);
  const { data, error, end } = useAuthorities(dog.id);
  return (
    <Sheet title={t('Agents')}>
      <ErrorBar error={error ?? end.error} />
      {data?.rows.length === 0 && <p className="small quiet">{t('Nobody may sign for an owner of this dog.')}</p>}
      <ul className="stack small">
        {data?.rows.map((a) => (
          <li key={a.id}>
            <Told text={t('**{agent}** for {owner}: {what}.', { agent: a.agentName, owner: a.ownerName, what: list(a.covers.map((c) => t(coveredInside[c]))) })} /> {a.evidence}
            <div className="quiet">
              {t('from {from} to {until}', { from: fullDay(a.from), until: fullDay(a.until) })}
              {a.ended && `, ${t('ended')}`}
            </div>
            {!a.ended && <Button onPress={() => end.mutate(a.id)}>{t('End it today')}</Button>}
          </li>
        ))}
      </ul>
      <div className="tasks">{open ? <AuthorityForm dog={dog} close={() => setOpen(false)} /> : <Button onPress={() => setOpen(true)}>{t('An owner’s authority')}</Button>}</div>
    </Sheet>
  );
}

function AuthorityForm({ dog, close }: { dog: Dog; close: () => void }) {
  const { add } = useAuthorities(dog.id);
  const [q, setQ] = useState<string>();
  const people = usePeople(q ?? '');
  const entry = useEntry(newAuthority, { from: new Date().toISOString().slice(0, 10) });
  const owners = dog.people.filter((p) => !p.until && (p.role === 'owner' || p.role === 'coOwner'));
  const submit = () => {
    const body = entry.check();
    if (body) add.mutate(body, { onSuccess: close, onError: entry.mark });
  };
  return (
    <EntryForm label={t('Keep this authority')} tries={entry.tries} errors={entry.errors} failure={add.error} busy={add.isPending} onSubmit={submit} beside={<Button onPress={close}>{t('Leave it')}</Button>}>
      <Select label={t('Owner who gives it')} options={owners.map((p) => ({ id: p.person.id, name: p.person.name }))} {...entry.field('owner')} />
      <TextField label={t('Find the agent by name, phone or mail')} value={q} onChange={setQ} autoComplete="off" />
      <Select label={t('Agent')} options={(people.data?.rows ?? []).map((p) => ({ id: p.id, name: p.name, hint: p.phone ?? p.email ?? '' }))} {...entry.field('agent')} placeholder={q ? t('Choose') : t('Find somebody first')} />
      <CheckboxGroup label={t('May say yes to')} options={authorityCovers.map((id) => ({ id, name: t(covered[id]) }))} {...entry.field('covers')} />
      <div className="form-row">
        <DateField label={t('From')} {...entry.field('from')} />
        <DateField label={t('To, that day included')} {...entry.field('until')} />
      </div>
      <TextField label={t('How it was given')} lines={2} {...entry.field('evidence')} help={t('The paper or mail, its date, where it lies.')} />
    </EntryForm>
  );
}
