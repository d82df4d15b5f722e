import { useState } from 'react';
import type { OrderScreen } from '#libs/contracts/screens/order';
import { Button } from '../../design/Button.js';
import { FilmBox } from '../../film/FilmBox.js';
import { ToneTools } from '../../film/ToneTools.js';
import { useFilm } from '../../film/use-film.js';
import { useLook, type ToneState } from '../../film/use-look.js';
import { useShortcut } from '../../shell/use-shortcut.js';
import { t } from '../../words/t.js';
import { MarkList } from '../order/marking/MarkList.js';
import { MarkPicture } from '../order/marking/MarkPicture.js';
import type { MarkedFilm } from '../order/marking/use-marks.js';
import { Beside } from './Beside.js';
import type { Exposure } from './view-rows.js';

type Props = { screen: OrderScreen; film: Exposure; beside: Exposure | undefined; marked: MarkedFilm | undefined; tone: ToneState; pointing: boolean; onPoint: () => void };

/** The picture, as large as the screen allows, and what hands do to it. */
export function Stage({ screen, film, beside, marked, tone, pointing, onPoint }: Props) {
  const base = `/api/orders/${screen.id}/images/${film.image}`;
  const shown = useFilm(`${base}/pixels`);
  const look = useLook(film.picture ?? shown.film ?? { width: 1, height: 1 }, tone);
  const [compared, setCompared] = useState(false);
  const [says, setSays] = useState('');
  const label = t('{view}, attempt {attempt}', { view: film.viewName, attempt: film.attempt });
  const compare = () => (beside ? (setSays(''), setCompared(!compared)) : setSays(t('There is only one attempt of this view.')));
  const point = () => (marked ? onPoint() : setSays(t('No points are set on this view, or not any more.')));
  useShortcut('s', compare);
  useShortcut('p', point);
  useShortcut('i', look.turn);
  useShortcut('0', look.whole);
  return (
    <section className="imaging-stage" aria-label={t('Picture')}>
      {pointing && marked && <MarkList marked={marked} />}
      <div className="imaging-films">
        <figure>
          <FilmBox film={shown} look={look} label={label} preview={`${base}/preview`} over={pointing && marked && film.picture ? <MarkPicture order={screen.id} film={film} picture={film.picture} marked={marked} below={look} /> : undefined} />
          {compared && beside && <figcaption className="label">{label}</figcaption>}
        </figure>
        {compared && beside && <Beside key={beside.id} order={screen.id} film={beside} look={look} />}
      </div>
      <div className="imaging-tools" role="group" aria-label={t('How the picture is shown')}>
        <Button onPress={point} aria-pressed={pointing} shortcut="P">
          {t('Points')}
        </Button>
        <Button onPress={compare} aria-pressed={compared && beside !== undefined} shortcut="S">
          {beside ? t('Beside attempt {attempt}', { attempt: beside.attempt }) : t('Side by side')}
        </Button>
        <Button onPress={look.whole} shortcut="0">
          {t('Whole picture')}
        </Button>
        <Button onPress={look.turn} aria-pressed={look.tone.turned} shortcut="I">
          {t('Black for white')}
        </Button>
        <ToneTools look={look} />
        <Button onPress={look.asItCame}>{t('As it came')}</Button>
        <span role="status" className="small">
          {says}
        </span>
      </div>
    </section>
  );
}
