import { studyActions } from '#libs/contracts/actions/study';
import type { StudyView } from '#libs/contracts/screens/order';
import { Select } from '../../../design/Select.js';
import { useEntry } from '../../../entry/use-entry.js';
import { t } from '../../../words/t.js';
import { ActionEntryForm } from './ActionEntryForm.js';
import { choicesFor, studyOf, type FormProps } from './form-props.js';
import { StudyJoints, useStudyJoints } from './StudyJoints.js';

const whichReading = studyActions.keyResult.omit({ joints: true });

/** The second keying of a posted sheet, without seeing the first. */
export function KeyResultForm(props: FormProps) {
  const study = studyOf(props);
  return study ? <Keyed {...props} study={study} /> : <p>{t('This study is no longer on the order. Reload the page.')}</p>;
}

function Keyed({ study, ...props }: FormProps & { study: StudyView }) {
  const results = choicesFor(props.screen, 'results');
  const entry = useEntry(whichReading, { result: results.length === 1 ? results[0]?.id : undefined });
  const written = useStudyJoints(study);
  return (
    <ActionEntryForm entry={entry} props={{ ...props, submit: (input) => props.submit({ ...(input as object), joints: written.joints() }) }} also={written.missing}>
      <p>{t('Key what the paper says, from the paper. What was keyed before is not shown, so that two people read it.')}</p>
      <Select label={t('Reading')} options={results} {...entry.field('result')} />
      <StudyJoints study={study} written={written} />
    </ActionEntryForm>
  );
}
