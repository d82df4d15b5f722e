import { pointsIn } from './mark-slots.js';
import type { MarkedFilm } from './use-marks.js';
import { t } from '../../../words/t.js';

/** What may be marked, and how many points each has; one is being marked. */
export function MarkList({ marked: { draft, change, slots } }: { marked: MarkedFilm }) {
  const current = slots.find((s) => s.key === draft.at);
  return (
    <div className="mark-list">
      <div role="group" aria-label={t('What is marked')}>
        {slots.map((s) => {
          const n = pointsIn(draft.set, s.key).length;
          return (
            <button key={s.key} type="button" className="mark-slot" aria-pressed={s.key === draft.at} onClick={() => change({ do: 'choose', at: s.key })}>
              {s.name}
              <span>{n === 0 ? t('none') : t('{count, plural, one {# point} other {# points}}', { count: n })}</span>
            </button>
          );
        })}
      </div>
      <p className="label">{current && t.known(current.rule.words)}</p>
    </div>
  );
}
