import type { OwnerPage } from '#libs/contracts/screens/owner';
import { longDay } from '../../design/format.js';

export function Advice({ page }: { page: OwnerPage }) {
  const { visit, practice } = page;
  if (!visit || page.knots.some((k) => k.state !== 'toCome')) return null;
  return (
    <section aria-labelledby="before">
      <h2 id="before">Before you come</h2>
      <p>
        <b>{longDay(visit.day)}, {visit.start}</b>
        <br />
        {practice.name}, {practice.address}
      </p>
      {visit.advice && (
        <>
          <h3>{visit.advice.title}</h3>
          <p className="written">{visit.advice.body}</p>
          <p className="quiet small">Approved by {visit.advice.approvedBy}, vet. If the vet told you something else, do what the vet said.</p>
        </>
      )}
    </section>
  );
}
