import { useState } from 'react';
import type { NewDog } from '#libs/contracts/register';
import { isFailure } from '../../api/failure.js';
import { useBreeds, useNewDog, useNewPerson } from '../../api/register.js';
import { Button } from '../../design/Button.js';
import { SuggestBox } from '../../design/ComboBox.js';
import { DateField } from '../../design/DateField.js';
import { ErrorBar } from '../../design/Notice.js';
import { TextField } from '../../design/TextField.js';
import { OwnerFields, type Owner } from '../../dog-entry/OwnerFields.js';
import { t } from '../../words/t.js';
import { emptyPup, pupMissing, PupRows, type Pup } from './PupRows.js';

/** What pups of a litter share is typed once; each has a name, a sex, a number, and a birthday of its own where it differs. */
export function NewPups({ onMade, onCancel }: { onMade: (dogs: string[]) => void; onCancel: () => void }) {
  const breeds = useBreeds();
  const make = useNewDog();
  const person = useNewPerson();
  const [shared, setShared] = useState<{ breed?: string | undefined; born?: string | undefined; damName?: string | undefined; sireName?: string | undefined }>({});
  const [owner, setOwner] = useState<Owner>();
  const [pups, setPups] = useState<Pup[]>([emptyPup(), emptyPup()]);
  const [tried, setTried] = useState(false);
  const [says, setSays] = useState<string>();
  const busy = make.isPending || person.isPending;

  const keep = async () => {
    setTried(true);
    setSays(undefined);
    if (!shared.breed || !owner || ('new' in owner && !owner.new.name) || pups.some((p) => pupMissing(p, shared.born).length > 0)) return setSays(t('Breed, owner, and of each pup name, sex, birthday and number are needed.'));
    // The owner is entered once, and each pup that was kept stays kept when a later one is refused.
    const id = 'person' in owner ? owner.person : (await person.mutateAsync(owner.new)).id;
    setOwner({ person: id });
    const made: Pup[] = [];
    for (const pup of pups) {
      const dog = pup.made ? pup.made : await make.mutateAsync(dogOf(pup, { ...shared, breed: shared.breed }, id)).then((d) => d.id, (e: unknown) => (isFailure(e) ? { refused: e.body.message } : Promise.reject(e as Error)));
      made.push(typeof dog === 'string' ? { ...pup, made: dog, refused: undefined } : { ...pup, refused: dog.refused });
    }
    setPups(made);
    if (made.every((p) => p.made)) onMade(made.flatMap((p) => p.made ?? []));
    else setSays(t('Not every pup could be kept. The lines say why; the others are kept.'));
  };

  return (
    <div className="stack">
      <div className="form-row">
        <SuggestBox label={t('Breed')} suggestions={breeds.data ?? []} value={shared.breed} onChange={(breed) => setShared({ ...shared, breed })} error={tried && !shared.breed ? t('The breed is needed.') : undefined} />
        <DateField label={t('Born')} value={shared.born} onChange={(born) => setShared({ ...shared, born })} help={t('A pup born after midnight gets its own day below.')} />
        <TextField label={t('Dam')} value={shared.damName} onChange={(damName) => setShared({ ...shared, damName })} autoComplete="off" />
        <TextField label={t('Sire (may stay empty)')} value={shared.sireName} onChange={(sireName) => setShared({ ...shared, sireName })} autoComplete="off" />
      </div>
      <fieldset className="form">
        <legend>
          <b>{t('Owner of all')}</b>
        </legend>
        <OwnerFields value={owner} onChange={setOwner} error={() => undefined} />
      </fieldset>
      <PupRows pups={pups} born={shared.born} tried={tried} onChange={setPups} />
      {says && (
        <p className="err" role="alert">
          {says}
        </p>
      )}
      <ErrorBar error={person.error} />
      <div className="acts">
        <Button kind="ink" onPress={() => void keep()}>
          {busy ? t('Keeping …') : t('{count, plural, one {Keep # pup} other {Keep # pups}}', { count: pups.length })}
        </Button>
        <Button onPress={onCancel}>{t('Leave it')}</Button>
      </div>
    </div>
  );
}

function dogOf(pup: Pup, { breed, born, damName, sireName }: { breed: string; born?: string | undefined; damName?: string | undefined; sireName?: string | undefined }, owner: string): NewDog {
  const day = pup.born ?? born ?? '';
  return {
    name: pup.name ?? '', breed, sex: pup.sex ?? 'male', neutered: false, birth: { earliest: day, latest: day, precision: 'day' }, studBook: [], owner: { person: owner },
    identifier: pup.scanned ? { kind: 'transponder', value: pup.number ?? '', how: 'scanned' } : { kind: 'transponder', value: pup.number ?? '', how: 'typedTwice', again: pup.again ?? '' },
    ...(damName ? { damName } : {}), ...(sireName ? { sireName } : {}),
  };
}
