import type { z } from 'zod';
import { layingsOf, type statedSize } from '#libs/contracts/film-size';
import type { OrderScreen } from '#libs/contracts/screens/order';
import { Select } from '../../../design/Select.js';
import { capital } from '../../../design/format.js';
import { wayWords } from '../../../film/way-words.js';
import { t } from '../../../words/t.js';
import { choicesFor } from './form-props.js';

export type StatedSize = z.input<typeof statedSize>;
type Props = { screen: OrderScreen; view: string | undefined; value: StatedSize | undefined; onChange: (size: StatedSize | undefined) => void; error: (path: string) => string | undefined };

const UNKNOWN = 'unknown';

/** Left out unless a person says that the picture is the detector's own, pixel for pixel. */
export function PixelSizeFields({ screen, view = '', value, onChange, error }: Props) {
  const detectors = choicesFor(screen, 'detectors');
  const layings = layingsOf(view);
  if (detectors.length === 0 || layings.length === 0) return <p className="small quiet">{t('How large its pixels are is not known, so this picture leaves without a size (DICOM: Secondary Capture). A practice manager enters the detector’s pixels under Practice, Equipment; or export the film as DICOM.')}</p>;
  return (
    <>
      <Select
        label={t('Size of its pixels')}
        options={[{ id: UNKNOWN, name: t('Not known') }, ...detectors.map((d) => ({ id: d.id, name: t('Exported pixel for pixel: {detector}', { detector: d.name }) }))]}
        value={value?.detector ?? UNKNOWN}
        // which way it lies is still to be said, and the contract asks for it
        onChange={(detector) => onChange(!detector || detector === UNKNOWN ? undefined : ({ ...value, detector } as StatedSize))}
        help={t('It holds only for a picture that was exported pixel for pixel: not cropped, not made larger or smaller, no photo of a screen. Not known, it leaves without a size (DICOM: Secondary Capture).')}
        error={error('size.detector') ?? error('size')}
      />
      {value && (
        <Select
          label={t('Which way it lies')}
          options={layings.map(([right, lower]) => ({ id: `${right} ${lower}`, name: capital(t('{right} at the right edge, {lower} at the lower edge.', { right: wayWords(right), lower: wayWords(lower) })) }))}
          value={value.right && `${value.right} ${value.lower}`}
          onChange={(chosen) => {
            const [right, lower] = layings.find((l) => l.join(' ') === chosen) ?? [];
            if (right && lower) onChange({ ...value, right, lower });
          }}
          error={error('size.right') ?? error('size.lower')}
        />
      )}
    </>
  );
}
