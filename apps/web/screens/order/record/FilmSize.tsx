import type { OrderScreen } from '#libs/contracts/screens/order';
import { capital } from '../../../design/format.js';
import { wayWords } from '../../../film/way-words.js';
import { t } from '../../../words/t.js';
import { isPicture } from './picture-film.js';

/** Of a PNG or JPEG: how large its pixels are said to be, or what it leaves as without that. */
export function FilmSize({ film }: { film: OrderScreen['exposures'][number] }) {
  if (!isPicture(film)) return null;
  const { stated, sealed } = film;
  if (!stated) {
    return (
      <p className="label">
        {t('Without a size: it goes to a centre as a picture only (DICOM: Secondary Capture).')} {!sealed && t('If it was exported pixel for pixel, say so under “Size of a picture’s pixels”; else export the film as DICOM.')}
      </p>
    );
  }
  return (
    <p>
      {t('Pixels of {mm, number, ::.####} mm, as stated for {detector}; not measured.', { mm: stated.pixelMm, detector: stated.detector })}{' '}
      {capital(t('{right} at the right edge, {lower} at the lower edge.', { right: wayWords(stated.right), lower: wayWords(stated.lower) }))}
    </p>
  );
}
