import { newDog, newPerson, type Dog, type NewDog } from '#libs/contracts/register';
import { useBreeds, useNewDog } from '../api/register.js';
import { Button } from '../design/Button.js';
import { Checkbox } from '../design/Checkboxes.js';
import { SuggestBox } from '../design/ComboBox.js';
import { RadioChoice } from '../design/RadioChoice.js';
import { TextField } from '../design/TextField.js';
import { EntryForm } from '../entry/EntryForm.js';
import { plainIssue } from '../entry/plain-issue.js';
import { useEntry, type Errors } from '../entry/use-entry.js';
import { t } from '../words/t.js';
import { BirthFields } from './BirthFields.js';
import { IdentifierFields, identifierMissing } from './IdentifierFields.js';
import { OwnerFields } from './OwnerFields.js';
import type { SaidOption } from '../design/Select.js';

const sexes: readonly SaidOption<'male' | 'female'>[] = [
  { id: 'male', name: 'Male', byLetter: true },
  { id: 'female', name: 'Female', byLetter: true },
];

/** A dog is entered once, with its owner. */
export function NewDogForm({ onMade, onCancel }: { onMade: (dog: Dog) => void; onCancel: () => void }) {
  const breeds = useBreeds();
  const make = useNewDog();
  const entry = useEntry(newDog, { neutered: false, identifier: { kind: 'transponder', how: 'typedTwice' } });
  const { identifier, owner } = entry.values;

  const missing = (): Errors => ({
    ...Object.fromEntries(Object.entries(identifierMissing(identifier ?? {})).map(([k, v]) => [`identifier.${k}`, v])),
    ...ownerMissing(owner),
  });
  return (
    <EntryForm
      label={t('Keep this dog')}
      tries={entry.tries}
      errors={entry.errors}
      failure={make.error}
      busy={make.isPending}
      beside={<Button onPress={onCancel}>{t('Leave it')}</Button>}
      onSubmit={() => {
        const dog = entry.check(missing());
        if (dog) make.mutate(dog as NewDog, { onSuccess: onMade, onError: entry.mark });
      }}
    >
      <div className="form-row">
        <TextField label={t('Name, as registered')} {...entry.field('name')} autoFocus autoComplete="off" />
        <TextField label={t('Called (may stay empty)')} {...entry.field('callName')} autoComplete="off" />
        <SuggestBox label={t('Breed')} suggestions={breeds.data ?? []} {...entry.field('breed')} />
      </div>
      <div className="form-row">
        <RadioChoice label={t('Sex')} options={sexes} {...entry.field('sex')} />
        <Checkbox label={t('Neutered')} {...entry.field('neutered')} />
      </div>
      <BirthFields onChange={(birth) => entry.set('birth', birth)} error={entry.error('birth')} />
      <IdentifierFields value={identifier ?? {}} onChange={(v) => entry.set('identifier', v)} error={(name) => entry.error(`identifier.${name}`)} />
      <fieldset className="form" data-invalid={entry.error('owner') && !owner ? '' : undefined}>
        <legend>
          <b>{t('Owner')}</b>
        </legend>
        <OwnerFields value={owner} onChange={(o) => entry.set('owner', o)} error={(name) => entry.error(`owner.new.${name}`)} />
      </fieldset>
      <div className="form-row">
        <TextField label={t('Breeder (may stay empty)')} {...entry.field('breeder')} autoComplete="off" />
        <TextField label={t('Sire (may stay empty)')} {...entry.field('sireName')} autoComplete="off" />
        <TextField label={t('Dam (may stay empty)')} {...entry.field('damName')} autoComplete="off" />
      </div>
    </EntryForm>
  );
}

/** Which part of a new owner is missing; the contract alone would only say "owner". */
function ownerMissing(owner: Partial<NewDog>['owner'] | { new: unknown } | undefined): Errors {
  if (owner && 'person' in owner) return {};
  const checked = newPerson.safeParse(owner && 'new' in owner ? owner.new : {}, { error: plainIssue });
  return checked.success ? {} : Object.fromEntries(checked.error.issues.map((i) => [`owner.new.${i.path.join('.')}`, t.known(i.message)]));
}
