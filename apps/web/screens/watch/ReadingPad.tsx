import { useState } from 'react';
import { visitActions } from '#libs/contracts/actions/visit';
import type { NextAction, OrderScreen, VisitView } from '#libs/contracts/screens/order';
import { useAct } from '../../api/act.js';
import { Button } from '../../design/Button.js';
import { asNumber } from '../../design/NumberField.js';
import { RadioChoice } from '../../design/RadioChoice.js';
import { fixed, plain, timeAt } from '../../design/format.js';
import { EntryForm } from '../../entry/EntryForm.js';
import { useEntry, type Errors } from '../../entry/use-entry.js';
import { t } from '../../words/t.js';
import { gums, measures, withKey, type Measure } from './measures.js';

const KEYS = ['1', '2', '3', '4', '5', 'delete', 'next', '6', '7', '8', '9', '0', '.'];
const decimalSign = () => fixed(0.5, 1).charAt(1);
type Typed = Partial<Record<Measure['name'], string>>;

/** A reading with gloved hands: big fields, the pad's own keys, and nothing that has to be filled in. */
export function ReadingPad({ screen, visit, next }: { screen: OrderScreen; visit: VisitView; next: NextAction }) {
  const [tried, setTried] = useState(0);
  const [kept, setKept] = useState('');
  return (
    <>
      <p role="status" className="small">{kept}</p>
      <Pad key={tried} screen={screen} visit={visit} next={next} onKept={(words) => { setKept(words); setTried((n) => n + 1); }} />
    </>
  );
}

function Pad({ screen, visit, next, onKept }: { screen: OrderScreen; visit: VisitView; next: NextAction; onKept: (words: string) => void }) {
  const entry = useEntry(visitActions.recordReading, { device: 'tablet' });
  const act = useAct(screen.id);
  const [key] = useState(() => crypto.randomUUID());
  const [typed, setTyped] = useState<Typed>({});
  const [at, setAt] = useState<Measure['name']>('heartRate');
  const last = visit.readings.at(-1)?.values;
  const type = (name: Measure['name'], text: string) => {
    setTyped((all) => ({ ...all, [name]: text }));
    entry.set(name, asNumber(text));
  };
  const press = (k: string) => type(at, withKey(typed[at] ?? '', k));
  const onward = () => {
    const here = measures.findIndex((m) => m.name === at);
    setAt(measures[(here + 1) % measures.length]!.name);
  };
  const nothing = (): Errors => (measures.some((m) => entry.values[m.name] !== undefined) || entry.values.gums ? {} : { heartRate: t('Write down at least one thing you saw.') });
  const keep = () => {
    const input = entry.check(nothing());
    if (!input) return;
    const words = t('The reading of {time} is kept.', { time: timeAt(screen.now, screen.practice.zone) });
    act.mutate({ action: 'recordReading', on: next.on.id, version: screen.version, key, input }, { onSuccess: () => onKept(words) });
  };
  return (
    <EntryForm label={t('Keep this reading')} tries={entry.tries} errors={entry.errors} failure={act.error} busy={act.isPending} size="tablet" onSubmit={keep}>
      <div className="pad-fields">
        {measures.map((m) => (
          <label key={m.name} className={m.name === at ? 'pad-field pad-here' : 'pad-field'}>
            <span className="label">
              {typeof last?.[m.name] === 'number' ? t('{label}, last {value}', { label: t(m.label), value: plain(last[m.name] as number) }) : t(m.label)}
            </span>
            <span className="with-unit">
              {/* Its own keys stand below, so the tablet's keyboard stays away; a real keyboard types here all the same. */}
              <input inputMode="none" autoComplete="off" value={(typed[m.name] ?? '').replace('.', decimalSign())} onFocus={() => setAt(m.name)} onChange={(e) => type(m.name, e.target.value.replace(',', '.').slice(0, 5))} aria-invalid={entry.error(m.name) !== undefined || undefined} aria-describedby={entry.error(m.name) && `pad-${m.name}`} />
              <span className="unit">{t(m.unit)}</span>
            </span>
            {entry.error(m.name) && <span className="field-error" id={`pad-${m.name}`}>{entry.error(m.name)}</span>}
          </label>
        ))}
      </div>
      <div className="pad-keys" role="group" aria-label={t('Keys for the chosen measure')}>
        {KEYS.map((k) => (
          <Button key={k} size="tablet" kind={k === 'next' ? 'ink' : 'plain'} onPress={() => (k === 'next' ? onward() : press(k))}>
            {k === 'delete' ? t('Delete') : k === 'next' ? t('Next') : k === '.' ? decimalSign() : k}
          </Button>
        ))}
      </div>
      <RadioChoice label={t('Gums')} size="tablet" options={gums} {...entry.field('gums')} />
    </EntryForm>
  );
}
