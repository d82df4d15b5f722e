import { useState } from 'react';
import { DropZone, FileTrigger, Text, type FileDropItem } from 'react-aria-components';
import { uploadImage, type Uploaded } from '../../../api/upload.js';
import { Button } from '../../../design/Button.js';
import { ErrorBar } from '../../../design/Notice.js';
import { t } from '../../../words/t.js';
import { HERE, Told } from '../../../words/Told.js';
import { fullDay } from '../../../design/format.js';

type Props = { order: string; label: string; uploaded: Uploaded | undefined; onUploaded: (u: Uploaded | undefined) => void; error: string | undefined };

/** The picture is stored at once; it becomes part of the order only when the form is kept. */
export function UploadField({ order, label, uploaded, onUploaded, error }: Props) {
  const [part, setPart] = useState<number>();
  const [failure, setFailure] = useState<unknown>();
  const take = async (file: File | undefined) => {
    if (!file) return;
    setFailure(undefined);
    onUploaded(undefined);
    setPart(0);
    try {
      onUploaded(await uploadImage(order, file, setPart));
    } catch (e) {
      setFailure(e);
    } finally {
      setPart(undefined);
    }
  };
  return (
    <div className="field wide" data-invalid={error ? '' : undefined}>
      <DropZone
        className="drop"
        onDrop={(e) => {
          const item = e.items.find((i): i is FileDropItem => i.kind === 'file');
          void item?.getFile().then(take);
        }}
      >
        <Text slot="label">{t('{label} Drop it here, or', { label })}</Text>
        <FileTrigger onSelect={(files) => void take(files?.[0])} acceptedFileTypes={['.dcm', 'application/dicom', 'image/png', 'image/jpeg']}>
          <Button>{uploaded ? t('Choose another file') : t('Choose a file')}</Button>
        </FileTrigger>
        {part !== undefined && (
          <span role="status" className="num">
            {part < 1 ? t('{percent}% sent', { percent: Math.floor(part * 100) }) : t('Sent; being checked')} <progress value={part} max={1} aria-label={t('Sending the picture')} />
          </span>
        )}
      </DropZone>
      <ErrorBar error={failure} />
      {uploaded && <Arrived order={order} uploaded={uploaded} />}
      {error && <span className="field-error">{error === t('This is needed.') ? t('The picture is still missing.') : error}</span>}
    </div>
  );
}

function Arrived({ order, uploaded }: { order: string; uploaded: Uploaded }) {
  return (
    <div className="arrived">
      {uploaded.previewable && <img src={`/api/orders/${order}/images/${uploaded.image}/preview`} alt={t('The picture that was sent')} />}
      <div>
        <p>
          <b>{uploaded.kind === 'dicom' ? 'DICOM' : uploaded.kind.toUpperCase()}</b>, <span className="val">{`${uploaded.width} × ${uploaded.height}`}</span>
          {uploaded.imageDay && <>, {t('taken {day}', { day: fullDay(uploaded.imageDay) })}</>}
          {uploaded.patientId && <>, <Told text={t('animal id in the file {number}', { number: HERE })} here={<span className="num">{uploaded.patientId}</span>} /></>}
        </p>
        {uploaded.warnings.map((w) => (
          <p key={w} className="warn">
            {w}
          </p>
        ))}
        {!uploaded.previewable && <p className="quiet">{t('This kind of file cannot be shown here. It is kept whole.')}</p>}
      </div>
    </div>
  );
}
