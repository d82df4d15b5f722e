import { setAsideImage } from '#libs/contracts/gateway';
import type { ArrivedImage, OrderScreen } from '#libs/contracts/screens/order';
import { useLeaveOut } from '../../../api/unmatched.js';
import { Sheet } from '../../../design/Sheet.js';
import { TextField } from '../../../design/TextField.js';
import { timeAt } from '../../../design/format.js';
import { t } from '../../../words/t.js';
import { AddForm } from '../../practice/AddForm.js';
import { HERE, Told } from '../../../words/Told.js';

/** Images that the X-ray machine has sent and whose view nobody has said yet. */
export function Arrived({ screen }: { screen: OrderScreen }) {
  const leave = useLeaveOut(screen.id);
  if (screen.arrived.length === 0) return null;
  return (
    <Sheet title={t('From the X-ray machine, not named yet')} beside={t('{count, plural, one {# image} other {# images}}', { count: screen.arrived.length })}>
      <p className="small">{t('“Take view” says which view each one is. Until then it is no film of this order, and nothing is sealed without it.')}</p>
      <ul className="films">
        {screen.arrived.map((image) => (
          <li key={image.image}>
            <ArrivedPicture order={screen.id} image={image} zone={screen.practice.zone} />
            <AddForm
              opens={t('It is no film of this order')}
              saves={t('Leave it out')}
              schema={setAsideImage}
              add={{ ...leave, mutate: (body, then) => leave.mutate({ image: image.image, body }, then) }}
            >
              {(entry) => <TextField label={t('Why')} {...entry.field('why')} autoComplete="off" help={t('It is kept, with your name and this reason.')} />}
            </AddForm>
          </li>
        ))}
      </ul>
    </Sheet>
  );
}

export function ArrivedPicture({ order, image, zone }: { order: string; image: ArrivedImage; zone: string }) {
  return (
    <figure className="film-one">
      {image.previewable ? <img src={`/api/orders/${order}/images/${image.image}/preview`} alt={t('Image from {machine}, {time}', { machine: image.from, time: timeAt(image.at, zone) })} loading="lazy" /> : <p className="no-preview small">{t('No picture of it can be shown here yet. It is kept whole.')}</p>}
      <figcaption>
        <b>{image.from}</b>
        <span className="label"> {timeAt(image.at, zone)}</span>
        {image.says && <span className="small">{t('It says: {words}.', { words: image.says })}</span>}
        {image.otherDog && (
          <p className="warn">
            <Told text={t('It names another dog: {number}. Look whose it is before you name it.', { number: HERE })} here={<span className="num">{image.patientId}</span>} />
          </p>
        )}
      </figcaption>
    </figure>
  );
}
