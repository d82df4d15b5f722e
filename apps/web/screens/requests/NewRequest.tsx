import { useState } from 'react';
import { newDataRequest } from '#libs/contracts/requests';
import { usePeople } from '../../api/register.js';
import { DateField } from '../../design/DateField.js';
import { Select } from '../../design/Select.js';
import { TextField } from '../../design/TextField.js';
import { t } from '../../words/t.js';
import { AddForm } from '../practice/AddForm.js';
import { kindOptions } from './request-words.js';
import { useOnRequests } from './queries.js';
import { named } from '../../words/named.js';

export function NewRequest({ today }: { today: string }) {
  const add = useOnRequests('');
  const [q, setQ] = useState<string>();
  const people = usePeople(q ?? '');
  return (
    <AddForm opens={t('Enter a request')} saves={t('Start its clock')} schema={newDataRequest} start={{ received: today }} add={add}>
      {(entry) => (
        <>
          <TextField label={t('Find the person by name, phone or mail')} value={q} onChange={setQ} autoComplete="off" />
          <Select label={t('Whose data')} options={(people.data?.rows ?? []).map((p) => ({ id: p.id, name: p.name, hint: p.phone ?? p.email ?? '' }))} {...entry.field('person')} placeholder={q ? t('Choose') : t('Find somebody first')} />
          <Select label={t('What is asked')} options={named(kindOptions)} {...entry.field('kind')} />
          <DateField label={t('Asked on')} help={t('The clock runs from this day.')} {...entry.field('received')} />
          <TextField label={t('In the person’s words')} lines={2} {...entry.field('asked')} />
        </>
      )}
    </AddForm>
  );
}
