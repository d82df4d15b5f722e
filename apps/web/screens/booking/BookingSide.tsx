import type { BookingOptions } from '#libs/contracts/booking';
import { Button } from '../../design/Button.js';
import { ErrorBar } from '../../design/Notice.js';
import { plural, shortDay } from '../../design/format.js';
import { EstimateTable } from '../../estimate/EstimateTable.js';
import type { Draft, Missing } from './booking-draft.js';

type Props = { options: BookingOptions | undefined; draft: Draft; missing: Missing[]; failure: unknown; busy: boolean };

export function BookingSide({ options, draft, missing, failure, busy }: Props) {
  const unknown = Object.values(draft.answers).filter((a) => a === 'unknown').length;
  const holds = unknown + (draft.accepted.how ? 0 : 1);
  const words = [...new Set(missing.map((m) => m.words))];
  return (
    <aside className="sheet side" aria-label="Estimate and booking">
      <h2>Estimate</h2>
      {options && draft.studies.length > 0 ? (
        <>
          <EstimateTable lines={options.estimate.lines} totalMinor={options.estimate.total.amountMinor} currency={options.estimate.total.currency} />
          <p className="label">All films taken are sent, also ones that are not good. A second visit, if films are sent back, is estimated again.</p>
        </>
      ) : (
        <p className="quiet">Choose the studies; the price stands here to be read out.</p>
      )}
      <p className="held-words" role="status">
        {words.length > 0 && (
          <>
            <b>{words.length === 1 ? 'One thing missing:' : `${words.length} things missing:`}</b> {words.join(', ')}.
          </>
        )}
      </p>
      <ErrorBar error={failure}>
        <p className="small">What you entered is kept.</p>
      </ErrorBar>
      <Button type="submit" kind="ink" shortcut="Ctrl Enter">
        {busy ? 'Booking …' : draft.slot ? `Book ${shortDay(draft.slot.day)}, ${draft.slot.start}` : 'Book'}
      </Button>
      {missing.length === 0 && draft.slot && holds > 0 && <p className="label">After booking: {plural(holds, 'hold stays', 'holds stay')}.</p>}
    </aside>
  );
}
