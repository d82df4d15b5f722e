import { Link } from '@tanstack/react-router';
import type { StudyView } from '#libs/contracts/screens/order';
import { fullDay } from '../../../design/format.js';
import { t } from '../../../words/t.js';
import { HERE, Told } from '../../../words/Told.js';

/** The same examination of this dog before: both readings, and whether they differ by more than the reading's error. */
export function Earlier({ study, earlier }: { study: string; earlier: NonNullable<StudyView['earlier']> }) {
  return (
    <div className="why">
      <p>
        <Told
          text={t('**{study}: read before,** on {day}, order {link}: {joints}.', { study, day: fullDay(earlier.readOn), link: HERE, joints: earlier.joints.map((j) => `${j.name} ${j.words}`).join(', ') })}
          here={<Link to="/orders/$order" params={{ order: earlier.order }} className="num">{earlier.accession}</Link>}
        />
      </p>
      {earlier.changes.length > 0 && (
        <ul className="lines">
          {earlier.changes.map((words) => (
            <li key={words}>{words}</li>
          ))}
        </ul>
      )}
      <p className="quiet">{earlier.counts}</p>
    </div>
  );
}
