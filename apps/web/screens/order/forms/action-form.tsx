import type { ComponentType } from 'react';
import type { ActionName } from '#libs/contracts/actions/all';
import { AdmitForm } from './AdmitForm.js';
import { AnswersForm } from './AnswersForm.js';
import { BookVisitForm } from './BookVisitForm.js';
import { ConsentSedationForm, ConsentStudyForm } from './ConsentForm.js';
import { DrugForm } from './DrugForm.js';
import { EstimateForm } from './EstimateForm.js';
import { ExamineForm } from './ExamineForm.js';
import { studyOf, type FormProps } from './form-props.js';
import { JudgeForm } from './JudgeForm.js';
import { KeyResultForm } from './KeyResultForm.js';
import { PlainForm } from './PlainForm.js';
import { PlanForm } from './PlanForm.js';
import { ReadingForm } from './ReadingForm.js';
import { RecoveryForm } from './RecoveryForm.js';
import { ResultForm } from './ResultForm.js';
import { ScanForm } from './ScanForm.js';
import { SheetForm } from './SheetForm.js';
import { TakeViewForm } from './TakeViewForm.js';
import { StateSizeForm } from './StateSizeForm.js';
import { t } from '../../../words/t.js';

const made: Partial<Record<ActionName, ComponentType<FormProps>>> = {
  book: BookVisitForm,
  acceptEstimate: EstimateForm,
  giveAnswers: AnswersForm,
  consentSedation: ConsentSedationForm,
  consentStudy: (props) => <ConsentStudyForm {...props} words={studyWords(props)} />,
  consentSendAll: (props) => <ConsentStudyForm {...props} words={t('Every film that is taken is sent to the centre, also ones that are not good. None is left out.')} />,
  admit: AdmitForm,
  scanDog: ScanForm,
  examine: ExamineForm,
  signPlan: PlanForm,
  recordReading: ReadingForm,
  recordDrug: DrugForm,
  takeView: TakeViewForm,
  judgeView: JudgeForm,
  stateSize: StateSizeForm,
  signRecovery: RecoveryForm,
  giveSheet: SheetForm,
  enterResult: ResultForm,
  keyResult: KeyResultForm,
};

export function ActionForm({ action, ...props }: FormProps & { action: ActionName }) {
  const Made = made[action];
  return Made ? <Made {...props} /> : <PlainForm action={action} {...props} />;
}

function studyWords(props: FormProps): string {
  const study = studyOf(props);
  return study ? t('{study}, version {version}, read by {centre}.', { study: study.name, version: study.version, centre: study.centre.name }) : '';
}
