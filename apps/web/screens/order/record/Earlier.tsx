import { Link } from '@tanstack/react-router';
import type { StudyView } from '#libs/contracts/screens/order';
import { fullDay } from '../../../design/format.js';

/** The same examination of this dog before: both readings, and whether they differ by more than the reading's error. */
export function Earlier({ study, earlier }: { study: string; earlier: NonNullable<StudyView['earlier']> }) {
  return (
    <div className="why">
      <p>
        <b>{study}: read before,</b> on {fullDay(earlier.readOn)}, order{' '}
        <Link to="/orders/$order" params={{ order: earlier.order }} className="num">
          {earlier.accession}
        </Link>
        : {earlier.joints.map((j) => `${j.name} ${j.words}`).join(', ')}.
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
