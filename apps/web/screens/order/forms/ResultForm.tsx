import { useState } from 'react';
import { enteredResult } from '#libs/contracts/actions/study';
import type { StudyView } from '#libs/contracts/screens/order';
import type { Uploaded } from '../../../api/upload.js';
import { DateField } from '../../../design/DateField.js';
import { RadioChoice } from '../../../design/RadioChoice.js';
import { TextField } from '../../../design/TextField.js';
import { useEntry, type Errors } from '../../../entry/use-entry.js';
import { t } from '../../../words/t.js';
import { ActionEntryForm } from './ActionEntryForm.js';
import { studyOf, type FormProps } from './form-props.js';
import { optionWords } from './option-words.js';
import { UploadField } from './UploadField.js';
import { StudyJoints, useStudyJoints } from './StudyJoints.js';

const channels = () => (['post', 'file', 'phone'] as const).map((id) => ({ id, name: optionWords(id) }));
const besideJoints = enteredResult.omit({ joints: true });

export function ResultForm(props: FormProps) {
  const study = studyOf(props);
  return study ? <Entered {...props} study={study} /> : <p>{t('This study is no longer on the order. Reload the page.')}</p>;
}

function Entered({ study, ...props }: FormProps & { study: StudyView }) {
  const entry = useEntry(besideJoints);
  const written = useStudyJoints(study);
  const [scan, setScan] = useState<Uploaded>();
  const missing = (): Errors => ({ ...written.missing(), ...(entry.values.channel === 'post' && !entry.values.scan && { scan: t('A result by post is scanned first; then two people key it.') }) });
  return (
    <ActionEntryForm entry={entry} props={{ ...props, submit: (input) => props.submit({ ...(input as object), joints: written.joints() }) }} also={missing}>
      <div className="form-row">
        <TextField label={t('The centre’s own number for this reading')} {...entry.field('ref')} autoComplete="off" autoFocus />
        <RadioChoice label={t('How it came')} options={channels()} value={channels().find((c) => c.id === entry.values.channel)?.id} onChange={(c) => entry.set('channel', c)} error={entry.error('channel')} />
      </div>
      {entry.values.channel === 'post' && (
        <UploadField
          order={props.screen.id}
          label={t('Scan of the sheet that came, PNG or JPEG.')}
          uploaded={scan}
          onUploaded={(u) => {
            setScan(u);
            entry.set('scan', u?.image);
          }}
          error={entry.error('scan')}
        />
      )}
      <StudyJoints study={study} written={written} />
      <div className="form-row">
        <TextField label={t('Transponder on the reading (may stay empty)')} {...entry.field('dogNumber')} inputMode="numeric" autoComplete="off" />
        <DateField label={t('Read on (may stay empty)')} {...entry.field('readOn')} />
      </div>
      <TextField label={t('Comment (may stay empty)')} lines={3} {...entry.field('comment')} />
    </ActionEntryForm>
  );
}
