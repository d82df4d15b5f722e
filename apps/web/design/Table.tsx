import type { ReactNode } from 'react';
import { t } from '../words/t.js';

export type Column<R> = { head: string; cell: (row: R) => ReactNode; right?: boolean; rowHead?: boolean };

export function Table<R>({ caption, columns, rows, rowKey, foot }: { caption: string; columns: readonly Column<R>[]; rows: readonly R[]; rowKey: (row: R, index: number) => string; foot?: ReactNode }) {
  return (
    <div className="scroll-x" tabIndex={0} role="region" aria-label={t('{caption}: table', { caption })}>
      <table className="tbl">
        <caption className="vh">{caption}</caption>
        <thead>
          <tr>
            {columns.map((c) => (
              <th key={c.head} scope="col" className={c.right ? 'r' : undefined}>
                {c.head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, i) => (
            <tr key={rowKey(row, i)}>
              {columns.map((c) =>
                c.rowHead ? (
                  <th key={c.head} scope="row">
                    {c.cell(row)}
                  </th>
                ) : (
                  <td key={c.head} className={c.right ? 'r' : undefined}>
                    {c.cell(row)}
                  </td>
                ),
              )}
            </tr>
          ))}
        </tbody>
        {foot && <tfoot>{foot}</tfoot>}
      </table>
    </div>
  );
}
