import { studyActions } from '#libs/contracts/actions/study';
import { sedationConsent } from '#libs/contracts/actions/visit';
import { RadioChoice, yesNo } from '../../../design/RadioChoice.js';
import { Select, type SaidOption } from '../../../design/Select.js';
import { SignatureField } from '../../../design/SignatureField.js';
import { useEntry, type Entry, type Errors } from '../../../entry/use-entry.js';
import { t } from '../../../words/t.js';
import { ActionEntryForm } from './ActionEntryForm.js';
import { EmergencyFields } from './EmergencyFields.js';
import { choicesFor, type FormProps } from './form-props.js';

const roles: readonly SaidOption<'owner' | 'agent'>[] = [
  { id: 'owner', name: 'Owner' },
  { id: 'agent', name: 'Agent of the owner' },
];

export function ConsentSedationForm(props: FormProps) {
  const entry = useEntry(sedationConsent, { signerRole: 'owner', signer: likelySigner(props) });
  const emergency = entry.values.emergency;
  return (
    <ActionEntryForm entry={entry} props={props} also={() => unsigned(entry.values)}>
      <RadioChoice label={t('Agrees to the sedation')} options={yesNo} {...entry.field('answer')} />
      {entry.values.answer === 'yes' && <EmergencyFields value={emergency} onChange={(e) => entry.set('emergency', e)} error={entry.error} />}
      <Signer entry={entry as unknown as SignerEntry} props={props} />
    </ActionEntryForm>
  );
}

/** For one study, or for sending every film: each purpose has its own yes or no. */
export function ConsentStudyForm(props: FormProps & { words: string }) {
  const entry = useEntry(studyActions.consentStudy, { signerRole: 'owner', signer: likelySigner(props) });
  return (
    <ActionEntryForm entry={entry} props={props} also={() => unsigned(entry.values)}>
      <p>{props.words}</p>
      <RadioChoice label={t('Agrees')} options={yesNo} {...entry.field('answer')} />
      <Signer entry={entry} props={props} />
    </ActionEntryForm>
  );
}

type SignerEntry = Entry<typeof studyActions.consentStudy>;

function Signer({ entry, props }: { entry: SignerEntry; props: FormProps }) {
  return (
    <>
      <div className="form-row">
        <Select label={t('Who signs')} options={choicesFor(props.screen, 'people')} {...entry.field('signer')} />
        <RadioChoice label={t('Signs as')} options={roles} {...entry.field('signerRole')} />
      </div>
      {entry.values.signerRole === 'agent' && <Select label={t('Stored authority of the agent')} options={choicesFor(props.screen, 'authorities')} {...entry.field('authority')} help={t('An authority is written down on the dog’s page, with its days and what it covers.')} />}
      <SignatureField
        value={{ signatureSvg: entry.values.signatureSvg, typedName: entry.values.typedName }}
        onChange={(s) => {
          entry.set('signatureSvg', s.signatureSvg);
          entry.set('typedName', s.typedName);
        }}
        error={entry.error('typedName')}
      />
    </>
  );
}

/** The owner signs, unless somebody says otherwise. */
function likelySigner({ screen }: FormProps): string | undefined {
  const people = choicesFor(screen, 'people');
  const owners = screen.dog.people.filter((p) => p.role === 'owner' && p.until === null).map((p) => p.person.id);
  return (people.find((p) => owners.includes(p.id)) ?? (people.length === 1 ? people[0] : undefined))?.id;
}

const unsigned = (v: { signatureSvg?: string | undefined; typedName?: string | undefined }): Errors => (v.signatureSvg || v.typedName ? {} : { typedName: t('Draw the signature, or write the name.') });
