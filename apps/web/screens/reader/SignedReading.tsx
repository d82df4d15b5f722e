import type { PackageScreen } from '#libs/contracts/screens/reader';
import { momentAt } from '../../design/format.js';
import { t } from '../../words/t.js';

export function SignedReading({ reading, zone }: { reading: NonNullable<PackageScreen['reading']>; zone: string }) {
  return (
    <div className="form">
      <dl className="facts wide">
        {reading.joints.flatMap((j) => [<dt key={j.name}>{j.name}</dt>, <dd key={`${j.name}-words`}>{j.words}</dd>])}
      </dl>
      {reading.comment && <p>{reading.comment}</p>}
      <p className="quiet small">
        {t('Signed by {person}, {at}. Number {number}. A signed reading is not changed; if it is wrong, write to the scheme, and an amendment takes its place.', { person: reading.signedBy, at: momentAt(reading.at, zone), number: reading.ref })}
      </p>
    </div>
  );
}
