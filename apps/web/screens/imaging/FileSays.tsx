import { wayWords } from '../../film/way-words.js';
import { t } from '../../words/t.js';
import type { Exposure } from './view-rows.js';

type Said = Exposure['said'];

/** What the film's own file says, in words, and how far it can be believed. Nothing here judges the film. */
export function FileSays({ said: { exposure, orientation } }: { said: Said }) {
  if (!exposure && !orientation) return null;
  return (
    <section aria-label={t('What the file says')}>
      <h2>{t('What the file says')}</h2>
      {exposure && <ExposureSays exposure={exposure} />}
      {orientation && <OrientationSays orientation={orientation} />}
    </section>
  );
}

function ExposureSays({ exposure }: { exposure: NonNullable<Said['exposure']> }) {
  const { index, target, deviation, fits } = exposure;
  return (
    <>
      <p className="small">
        {t('Exposure index {index, number}.', { index })} {target !== null && t('The machine aims for {target, number}.', { target })}{' '}
        {deviation !== null && t('Deviation index {deviation, number, ::+? .0}: {more}.', { deviation, more: against(exposure.percent ?? 0) })}
      </p>
      {!fits && (
        <p className="mark-remark">
          <b>{t('The machine’s own numbers do not go together.')}</b> {t('Trust neither before the X-ray system was looked at.')}
        </p>
      )}
      <p className="small quiet">{t('Each maker counts this its own way: compare it with the same view on the same machine only. It says nothing of the dog, and whether the film can be read is seen in the film.')}</p>
    </>
  );
}

/** How much more or less of it reached the detector than whoever set up the machine wants for such a film. */
function against(percent: number): string {
  if (Math.abs(percent) < 5) return t('about as much as it aims for');
  return percent > 0 ? t('{percent, number} % more than it aims for', { percent }) : t('{percent, number} % less than it aims for', { percent: -percent });
}

function OrientationSays({ orientation: { right, foot, asOfPeople } }: { orientation: NonNullable<Said['orientation']> }) {
  return (
    <>
      <p className="small">
        {t('To the right edge: {way}.', { way: wayWords(right) })} {t('To the lower edge: {way}.', { way: wayWords(foot) })} {asOfPeople && t('It is written in the letters for people, as the machine is not set up for animals.')}
      </p>
      <p className="small quiet">{t('A file does not know when a plate was turned. Where it differs from the side marker in the picture, the marker counts.')}</p>
    </>
  );
}
