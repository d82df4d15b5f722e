import { Button } from '../../design/Button.js';
import { DateField } from '../../design/DateField.js';
import { RadioChoice } from '../../design/RadioChoice.js';
import { TextField } from '../../design/TextField.js';
import { useTransponderReader } from '../../entry/use-transponder-reader.js';
import { t } from '../../words/t.js';
import type { SaidOption } from '../../design/Select.js';
import { Told } from '../../words/Told.js';

export type Pup = { key: string; name?: string | undefined; sex?: 'male' | 'female' | undefined; born?: string | undefined; number?: string | undefined; again?: string | undefined; scanned: boolean; made?: string | undefined; refused?: string | undefined };

export const emptyPup = (): Pup => ({ key: crypto.randomUUID(), scanned: false });

const sexes: readonly SaidOption<'male' | 'female'>[] = [
  { id: 'male', name: 'Male', byLetter: true },
  { id: 'female', name: 'Female', byLetter: true },
];

/** A number that was typed is typed twice: it has no check digit. */
export function pupMissing(p: Pup, born: string | undefined): string[] {
  return [
    ...(p.name ? [] : [t('name')]),
    ...(p.sex ? [] : [t('sex')]),
    ...((p.born ?? born) ? [] : [t('birthday')]),
    ...(p.number ? [] : [t('number')]),
    ...(p.number && !p.scanned && p.again !== p.number ? [t('the same number once more')] : []),
  ];
}

type Props = { pups: Pup[]; born: string | undefined; tried: boolean; onChange: (pups: Pup[]) => void };

export function PupRows({ pups, born, tried, onChange }: Props) {
  const set = (key: string, part: Partial<Pup>) => onChange(pups.map((p) => (p.key === key ? { ...p, ...part } : p)));
  // The reader fills the first pup that has no number yet.
  useTransponderReader((number) => {
    const next = pups.find((p) => !p.number);
    if (next) set(next.key, { number, scanned: true, again: undefined });
  });
  return (
    <>
      <ol className="dogs-named">
        {pups.map((p, i) => {
          const missing = tried && !p.made ? pupMissing(p, born) : [];
          return (
            <li key={p.key}>
              {p.made ? (
                <p>
                  <Told text={t('**{name}** is kept.', { name: p.name ?? '' })} />
                </p>
              ) : (
                <div className="form-row">
                  <TextField label={t('Name of pup {number}', { number: i + 1 })} value={p.name} onChange={(name) => set(p.key, { name })} autoComplete="off" />
                  <RadioChoice label={t('Sex')} options={sexes} value={p.sex} onChange={(sex) => set(p.key, { sex })} />
                  <TextField label={t('Transponder')} value={p.number} onChange={(number) => set(p.key, { number, scanned: false })} inputMode="numeric" autoComplete="off" {...(p.scanned && { help: t('Read by the scanner') })} />
                  {!p.scanned && <TextField label={t('The number once more')} value={p.again} onChange={(again) => set(p.key, { again })} inputMode="numeric" autoComplete="off" />}
                  <DateField label={t('Born on another day')} value={p.born} onChange={(day) => set(p.key, { born: day })} />
                  {pups.length > 1 && (
                    <Button kind="text" aria-label={t('Take pup {number} off', { number: i + 1 })} onPress={() => onChange(pups.filter((x) => x.key !== p.key))}>
                      {t('Take off')}
                    </Button>
                  )}
                </div>
              )}
              {missing.length > 0 && <span className="field-error">{t('Still needed: {what}.', { what: missing.join(', ') })}</span>}
              {p.refused && <span className="field-error">{p.refused}</span>}
            </li>
          );
        })}
      </ol>
      <div className="acts">
        <Button onPress={() => onChange([...pups, emptyPup()])}>{t('One more pup')}</Button>
      </div>
    </>
  );
}
