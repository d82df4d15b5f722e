import type { GroupOptions } from '#libs/contracts/group-booking';
import { Button } from '../../design/Button.js';
import { ErrorBar } from '../../design/Notice.js';
import { money, shortDay } from '../../design/format.js';
import { EstimateTable } from '../../estimate/EstimateTable.js';
import { t } from '../../words/t.js';
import type { Gap, GroupDraft } from './group-draft.js';
import { Told } from '../../words/Told.js';

type Props = { options: GroupOptions | undefined; draft: GroupDraft; gaps: Gap[]; failure: unknown; busy: boolean };

export function GroupSide({ options, draft, gaps, failure, busy }: Props) {
  const fit = options?.dogs.filter((d) => d.problems.length === 0).length ?? 0;
  const left = (options?.dogs.length ?? 0) - fit;
  return (
    <aside className="sheet side" aria-label={t('Estimate and booking')}>
      <h2>{t('Estimate, for each dog')}</h2>
      {options && draft.studies.length > 0 ? (
        <>
          <EstimateTable lines={options.estimate.lines} totalMinor={options.estimate.total.amountMinor} currency={options.estimate.total.currency} />
          <p>
            <Told text={t('{fit, plural, one {# dog} other {# dogs}}: **{money}**', { fit, money: money(options.estimate.total.amountMinor * fit, options.estimate.total.currency) })} strong="num" />
          </p>
        </>
      ) : (
        <p className="quiet">{t('Choose the studies; the price stands here to be read out.')}</p>
      )}
      {left > 0 && draft.day && <p>{t('{left, plural, one {# dog cannot be booked on this day. The mail says so, and when it can.} other {# dogs cannot be booked on this day. The mail says so, and when they can.}}', { left })}</p>}
      <p className="held-words" role="status">
        {gaps.length > 0 && (
          <Told text={t('**{count, plural, one {One thing missing} other {# things missing}}:** {sentences}', { count: gaps.length, sentences: [...new Set(gaps.map((g) => g.says))].join(' ') })} />
        )}
      </p>
      <ErrorBar error={failure}>
        <p className="small">{t('What you entered is kept.')}</p>
      </ErrorBar>
      <Button type="submit" kind="ink" shortcut={t('Ctrl Enter')}>
        {busy ? t('Booking …') : draft.day && fit > 0 ? t('Book {fit, plural, one {# dog} other {# dogs}}, {day}', { fit, day: shortDay(draft.day) }) : t('Book')}
      </Button>
    </aside>
  );
}
