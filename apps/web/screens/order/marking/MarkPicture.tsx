import type { KeyboardEvent } from 'react';
import { Drawn } from './Drawn.js';
import { MarkTools } from './MarkTools.js';
import { MarkPoint } from './MarkPoint.js';
import { pointsIn } from './mark-slots.js';
import type { Exposure, MarkedFilm } from './use-marks.js';
import { usePicture, type SharedView } from './use-picture.js';
import { t } from '../../../words/t.js';

type Props = { order: string; film: Exposure; picture: NonNullable<Exposure['picture']>; marked: MarkedFilm; /** The picture is drawn below already, and looked at as it is there. */ below?: SharedView };

/** The picture in its own pixels, with what is set on it. */
export function MarkPicture({ order, film, picture, marked: { draft, change, slots, found }, below }: Props) {
  const { view, svg, dot, zoom, pan, whole, middle, handlers } = usePicture(picture, {
    click: (at) => change({ do: 'add', at }),
    drag: (to, first) => change({ do: 'move', to, first }),
  }, below);
  const name = t('{view}, attempt {attempt}', { view: film.viewName, attempt: film.attempt });
  const slot = slots.find((s) => s.key === draft.at);
  const keys: Record<string, () => void> = {
    z: () => change({ do: 'undo' }), '+': () => zoom(1.5), '=': () => zoom(1.5), '-': () => zoom(1 / 1.5), '0': whole,
    ArrowLeft: () => pan(-0.1, 0), ArrowRight: () => pan(0.1, 0), ArrowUp: () => pan(0, -0.1), ArrowDown: () => pan(0, 0.1),
  };
  const onKeyDown = (e: KeyboardEvent) => {
    const act = keys[e.key.toLowerCase()] ?? keys[e.key];
    if (!act || e.altKey || (e.shiftKey && e.key.startsWith('Arrow')) || ((e.ctrlKey || e.metaKey) && e.key.toLowerCase() !== 'z')) return;
    e.preventDefault();
    act();
  };
  return (
    <div className={below ? 'mark-picture mark-over' : 'mark-picture'} onKeyDown={onKeyDown}>
      <svg ref={svg} viewBox={`${view.x} ${view.y} ${view.width} ${view.height}`} role="group" aria-label={t('{film}. Click to set a point of {mark}, drag to move it; wheel or plus and minus for nearer and further.', { film: name, mark: slot?.name ?? t('nothing') })} tabIndex={0} {...handlers}>
        {!below && <image href={`/api/orders/${order}/images/${film.image}/preview`} width={picture.width} height={picture.height} preserveAspectRatio="none" />}
        {found && <Drawn found={found} picture={picture} />}
        {slots.flatMap((s) =>
          pointsIn(draft.set, s.key).map((at, i) => (
            <MarkPoint key={`${s.key} ${i}`} at={at} slot={s.key} index={i} name={s.name} chosen={draft.at === s.key && draft.chosen === i} current={draft.at === s.key} dot={dot} change={change} />
          )),
        )}
      </svg>
      <MarkTools change={change} zoom={zoom} whole={whole} middle={middle} />
    </div>
  );
}
