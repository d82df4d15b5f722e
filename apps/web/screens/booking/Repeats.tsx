import { Link } from '@tanstack/react-router';
import type { BookingOptions } from '#libs/contracts/booking';

/** Earlier orders of the same dog, so that nothing is booked twice. */
export function Repeats({ repeats }: { repeats: BookingOptions['repeats'] }) {
  if (repeats.length === 0) return null;
  return (
    <ul className="why small">
      {repeats.map((r) => (
        <li key={r.orderId}>
          {r.words}{' '}
          <Link to="/orders/$order" params={{ order: r.orderId }} className="num">
            {r.accession}
          </Link>
        </li>
      ))}
    </ul>
  );
}
