import type { BookingOptions } from '#libs/contracts/booking';
import { Button } from '../../design/Button.js';
import { ErrorBar } from '../../design/Notice.js';
import { shortDay } from '../../design/format.js';
import { EstimateTable } from '../../estimate/EstimateTable.js';
import { t } from '../../words/t.js';
import type { Draft, Missing } from './booking-draft.js';
import { Told } from '../../words/Told.js';

type Props = { options: BookingOptions | undefined; draft: Draft; missing: Missing[]; failure: unknown; busy: boolean };

export function BookingSide({ options, draft, missing, failure, busy }: Props) {
  const unknown = Object.values(draft.answers).filter((a) => a === 'unknown').length;
  const holds = unknown + (draft.accepted.how ? 0 : 1);
  const words = [...new Set(missing.map((m) => m.words))];
  return (
    <aside className="sheet side" aria-label={t('Estimate and booking')}>
      <h2>{t('Estimate')}</h2>
      {options && draft.studies.length > 0 ? (
        <>
          <EstimateTable lines={options.estimate.lines} totalMinor={options.estimate.total.amountMinor} currency={options.estimate.total.currency} />
          <p className="label">{t('All films taken are sent, also ones that are not good. A second visit, if films are sent back, is estimated again.')}</p>
        </>
      ) : (
        <p className="quiet">{t('Choose the studies; the price stands here to be read out.')}</p>
      )}
      <p className="held-words" role="status">
        {words.length > 0 && (
          <Told text={t('**{count, plural, one {One thing missing} other {# things missing}}:** {words}.', { count: words.length, words: words.join(', ') })} />
        )}
      </p>
      <ErrorBar error={failure}>
        <p className="small">{t('What you entered is kept.')}</p>
      </ErrorBar>
      <Button type="submit" kind="ink" shortcut={t('Ctrl Enter')}>
        {busy ? t('Booking …') : draft.slot ? t('Book {day}, {start}', { day: shortDay(draft.slot.day), start: draft.slot.start }) : t('Book')}
      </Button>
      {missing.length === 0 && draft.slot && holds > 0 && <p className="label">{t('After booking: {holds, plural, one {# hold stays} other {# holds stay}}.', { holds })}</p>}
    </aside>
  );
}
