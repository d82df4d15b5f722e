import { Link } from '@tanstack/react-router';
import { Loading } from '../../design/Empty.js';
import { ErrorBar } from '../../design/Notice.js';
import { Sheet } from '../../design/Sheet.js';
import { Table } from '../../design/Table.js';
import { amount } from '../../design/format.js';
import { t } from '../../words/t.js';
import { useGroupFees } from './queries.js';

/** Dogs of one call have one payer: each of them, and their sum. */
export function GroupFees({ group }: { group: string }) {
  const { data, error } = useGroupFees(group);
  if (!data) return error ? <ErrorBar error={error} /> : <Loading what={t('the fees')} />;
  const { rows, sum, currency } = data;
  return (
    <Sheet title={t('Fees')} beside={t('in {currency}', { currency })}>
      {rows.length === 0 ? (
        <p className="small quiet">{t('None of these dogs is booked, so nothing is charged.')}</p>
      ) : (
        <Table
          caption={t('Fees of each dog')}
          rows={rows}
          rowKey={(r) => r.order}
          columns={[
            { head: t('Dog'), rowHead: true, cell: (r) => <Link to="/orders/$order/fees" params={{ order: r.order }}>{r.dog}</Link> },
            { head: t('Accepted'), right: true, cell: (r) => amount(r.acceptedMinor) },
            { head: t('Charged'), right: true, cell: (r) => amount(r.chargedMinor) },
            { head: t('Paid'), right: true, cell: (r) => amount(r.paidMinor) },
            { head: t('Open'), right: true, cell: (r) => amount(r.openMinor) },
          ]}
          foot={
            <tr>
              <th scope="row">{t('All')}</th>
              {[sum.acceptedMinor, sum.chargedMinor, sum.paidMinor, sum.openMinor].map((minor, i) => (
                <td key={i} className="r">
                  {amount(minor)}
                </td>
              ))}
            </tr>
          }
        />
      )}
    </Sheet>
  );
}
