import { useState } from 'react';
import type { PackageScreen } from '#libs/contracts/screens/reader';
import { Film } from './Film.js';
import { t } from '../../words/t.js';

/** Every film of the package, one large, the others a press away; what was taken again is named so. */
export function Bench({ screen }: { screen: PackageScreen }) {
  const [at, setAt] = useState(Math.max(0, screen.images.findIndex((i) => i.accepted && i.previewable)));
  const image = screen.images[at];
  if (!image) return <section className="bench" aria-label={t('Pictures')}><p className="film-none">{t('There is no picture in this package. Send it back with that reason.')}</p></section>;
  return (
    <section className="bench" aria-label={t('Pictures')}>
      <div className="bench-hold">
        <Film key={image.image} image={image} base={`/api/reader/packages/${screen.package}`} label={`${image.viewName}${beside(image, screen.images)}`} />
        <div className="film-strip" role="group" aria-label={t('Views')}>
          {screen.images.map((i, n) => (
            <button key={i.image} type="button" aria-pressed={n === at} onClick={() => setAt(n)}>
              {n + 1} {i.viewName}
              {beside(i, screen.images)}
            </button>
          ))}
        </div>
      </div>
    </section>
  );
}

type Image = PackageScreen['images'][number];

function beside(image: Image, all: readonly Image[]): string {
  const again = all.filter((i) => i.view === image.view).length > 1;
  return [again && t('attempt {attempt}', { attempt: image.attempt }), !image.accepted && t('then taken again')].map((part) => (part ? `, ${part}` : '')).join('');
}
