import { useEffect, useRef } from 'react';
import type { BookingOptions } from '#libs/contracts/booking';
import { Checkbox } from '../../design/Checkboxes.js';
import { Select } from '../../design/Select.js';
import { fullDay } from '../../design/format.js';
import { t } from '../../words/t.js';
import type { Draft } from './booking-draft.js';
import { Told } from '../../words/Told.js';

type Offered = BookingOptions['studies'][number];
type Props = { offered: readonly Offered[]; chosen: Draft['studies']; onChange: (studies: Draft['studies']) => void; error: string | undefined };

const same = (a: { protocol: string; version: string }, b: { protocol: string; version: string }) => a.protocol === b.protocol && a.version === b.version;

/** What can be done stands with a box; what cannot says why and from which day. */
export function StudiesPart({ offered, chosen, onChange, error }: Props) {
  const part = useRef<HTMLFieldSetElement>(null);
  // What found the dog is gone from the page; whoever books without a mouse goes on here.
  useEffect(() => {
    if (document.activeElement === document.body) part.current?.querySelector('input')?.focus();
  }, []);
  return (
    <fieldset ref={part} data-invalid={error ? '' : undefined}>
      <legend className="vh">{t('Studies for this visit')}</legend>
      {offered.map((s) => {
        const mine = chosen.find((c) => same(c, s));
        const centre = mine?.centre ?? s.centres[0]?.id;
        const set = (on: boolean | undefined) => onChange(on && centre ? [...chosen, { protocol: s.protocol, version: s.version, centre }] : chosen.filter((c) => !same(c, s)));
        return (
          <div className="study" key={s.protocol + s.version}>
            {s.problems.length > 0 && !mine ? <div className="not">{s.name}</div> : <Checkbox label={s.name} value={mine !== undefined} onChange={set} />}
            {s.problems.length > 0 ? (
              <div className="why">
                {s.problems.map((p) => (
                  <p key={p.code} style={{ padding: 0 }}>
                    {p.words} {p.earliestDate && !p.words.includes(fullDay(p.earliestDate)) && <Told text={t('Earliest day **{day}**.', { day: fullDay(p.earliestDate) })} />}
                  </p>
                ))}
              </div>
            ) : (
              <p>{s.says}</p>
            )}
            {mine && s.centres.length > 1 && <Select label={t('Read by')} options={s.centres} value={mine.centre} onChange={(c) => c && onChange(chosen.map((x) => (same(x, s) ? { ...x, centre: c } : x)))} />}
          </div>
        );
      })}
      {error && <span className="field-error">{error}</span>}
    </fieldset>
  );
}
