import { Button } from '../../design/Button.js';
import { DateField } from '../../design/DateField.js';
import { RadioChoice } from '../../design/RadioChoice.js';
import { TextField } from '../../design/TextField.js';
import { useTransponderReader } from '../../entry/use-transponder-reader.js';

export type Pup = { key: string; name?: string | undefined; sex?: 'male' | 'female' | undefined; born?: string | undefined; number?: string | undefined; again?: string | undefined; scanned: boolean; made?: string | undefined; refused?: string | undefined };

export const emptyPup = (): Pup => ({ key: crypto.randomUUID(), scanned: false });

const sexes = [
  { id: 'male' as const, name: 'Male', key: 'm' },
  { id: 'female' as const, name: 'Female', key: 'f' },
];

/** A number that was typed is typed twice: it has no check digit. */
export function pupMissing(p: Pup, born: string | undefined): string[] {
  return [
    ...(p.name ? [] : ['name']),
    ...(p.sex ? [] : ['sex']),
    ...((p.born ?? born) ? [] : ['birthday']),
    ...(p.number ? [] : ['number']),
    ...(p.number && !p.scanned && p.again !== p.number ? ['the same number once more'] : []),
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
                  <b>{p.name}</b> is kept.
                </p>
              ) : (
                <div className="form-row">
                  <TextField label={`Name of pup ${i + 1}`} value={p.name} onChange={(name) => set(p.key, { name })} autoComplete="off" />
                  <RadioChoice label="Sex" options={sexes} value={p.sex} onChange={(sex) => set(p.key, { sex })} />
                  <TextField label="Transponder" value={p.number} onChange={(number) => set(p.key, { number, scanned: false })} inputMode="numeric" autoComplete="off" {...(p.scanned && { help: 'Read by the scanner' })} />
                  {!p.scanned && <TextField label="The number once more" value={p.again} onChange={(again) => set(p.key, { again })} inputMode="numeric" autoComplete="off" />}
                  <DateField label="Born on another day" value={p.born} onChange={(day) => set(p.key, { born: day })} />
                  {pups.length > 1 && (
                    <Button kind="text" aria-label={`Take pup ${i + 1} off`} onPress={() => onChange(pups.filter((x) => x.key !== p.key))}>
                      Take off
                    </Button>
                  )}
                </div>
              )}
              {missing.length > 0 && <span className="field-error">Still needed: {missing.join(', ')}.</span>}
              {p.refused && <span className="field-error">{p.refused}</span>}
            </li>
          );
        })}
      </ol>
      <div className="acts">
        <Button onPress={() => onChange([...pups, emptyPup()])}>One more pup</Button>
      </div>
    </>
  );
}
