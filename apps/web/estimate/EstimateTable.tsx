import { amount } from '../design/format.js';
import { t } from '../words/t.js';

export function EstimateTable({ lines, totalMinor, currency }: { lines: readonly { words: string; amountMinor: number }[]; totalMinor: number; currency: string }) {
  return (
    <table className="tbl estimate">
      <caption className="vh">{t('Estimate')}</caption>
      <tbody>
        {lines.map((l, i) => (
          <tr key={`${l.words}${i}`}>
            <th scope="row">{l.words}</th>
            <td className="r val">{amount(l.amountMinor)}</td>
          </tr>
        ))}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row">{t('In {currency}', { currency })}</th>
          <td className="r val">{amount(totalMinor)}</td>
        </tr>
      </tfoot>
    </table>
  );
}
