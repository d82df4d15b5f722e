import type { GroupOptions } from '#libs/contracts/group-booking';
import { Button } from '../../design/Button.js';
import { ErrorBar } from '../../design/Notice.js';
import { money, plural, shortDay } from '../../design/format.js';
import { EstimateTable } from '../../estimate/EstimateTable.js';
import type { Gap, GroupDraft } from './group-draft.js';

type Props = { options: GroupOptions | undefined; draft: GroupDraft; gaps: Gap[]; failure: unknown; busy: boolean };

export function GroupSide({ options, draft, gaps, failure, busy }: Props) {
  const fit = options?.dogs.filter((d) => d.problems.length === 0).length ?? 0;
  const left = (options?.dogs.length ?? 0) - fit;
  return (
    <aside className="sheet side" aria-label="Estimate and booking">
      <h2>Estimate, for each dog</h2>
      {options && draft.studies.length > 0 ? (
        <>
          <EstimateTable lines={options.estimate.lines} totalMinor={options.estimate.total.amountMinor} currency={options.estimate.total.currency} />
          <p>
            {plural(fit, 'dog', 'dogs')}: <b className="num">{money(options.estimate.total.amountMinor * fit, options.estimate.total.currency)}</b>
          </p>
        </>
      ) : (
        <p className="quiet">Choose the studies; the price stands here to be read out.</p>
      )}
      {left > 0 && draft.day && <p>{plural(left, 'dog cannot be booked on this day. The mail says so, and when it can.', 'dogs cannot be booked on this day. The mail says so, and when they can.')}</p>}
      <p className="held-words" role="status">
        {gaps.length > 0 && (
          <>
            <b>{gaps.length === 1 ? 'One thing missing:' : `${gaps.length} things missing:`}</b> {[...new Set(gaps.map((g) => g.says))].join(' ')}
          </>
        )}
      </p>
      <ErrorBar error={failure}>
        <p className="small">What you entered is kept.</p>
      </ErrorBar>
      <Button type="submit" kind="ink" shortcut="Ctrl Enter">
        {busy ? 'Booking …' : draft.day && fit > 0 ? `Book ${plural(fit, 'dog', 'dogs')}, ${shortDay(draft.day)}` : 'Book'}
      </Button>
    </aside>
  );
}
