import { Link } from '@tanstack/react-router';
import type { FilePreview, PreviewRow } from '#libs/contracts/results-in';
import { Table } from '../../design/Table.js';
import { t } from '../../words/t.js';

const states = { ready: 'Can be taken', alreadyThere: 'There already', wrong: 'Cannot be taken' } as const;

/** What each row would be, or what is wrong with it; nothing of it is stored yet. */
export function PreviewRows({ preview: { rows, sheet } }: { preview: FilePreview }) {
  const count = (state: PreviewRow['state']) => rows.filter((r) => r.state === state).length;
  return (
    <div className="preview">
      <p role="status">
        <b>{t('Nothing has been taken yet.')}</b>{' '}
        {t('{ready, plural, =0 {None can be taken} one {# row can be taken} other {# rows can be taken}}, {there, plural, =0 {none is} one {# is} other {# are}} there already, {wrong, plural, =0 {none is} one {# is} other {# are}} wrong.', { ready: count('ready'), there: count('alreadyThere'), wrong: count('wrong') })}
      </p>
      {sheet && sheet.others > 0 && <p>{t('Only the sheet “{name}” was looked at. The workbook has {others, plural, one {another one, which was not} other {# others, which were not}}.', { name: sheet.name, others: sheet.others })}</p>}
      <Table
        caption={t('Rows of the file')}
        rows={rows}
        rowKey={(r) => String(r.row)}
        columns={[
          { head: t('Row'), rowHead: true, cell: (r) => <span className="num">{r.row}</span> },
          { head: t('As the file has it'), cell: (r) => <><span className="num">{r.reference}</span><span className="block small">{[r.number, r.readBy].filter(Boolean).join(', ')}</span></> },
          { head: t('Order and study'), cell: (r) => <>{r.order && <><Link to="/orders/$order" params={{ order: r.order.id }} className="num nowrap">{r.order.accession}</Link> {r.order.dog}</>}<span className="block small">{r.study && t.known(r.study)}</span></> },
          { head: t('What was read'), cell: (r) => <>{r.joints.map((j) => <span key={j.name} className="block">{t.known(j.name)}: {j.words}</span>)}{r.dog && <span className="block small quiet">{r.dog}</span>}</> },
          { head: t('What it would be'), cell: (r) => <What row={r} /> },
        ]}
      />
    </div>
  );
}

function What({ row: { state, words, asks } }: { row: PreviewRow }) {
  return (
    <div className={state === 'wrong' ? 'err' : undefined}>
      <b>{t.known(states[state])}.</b> {state !== 'ready' && t.known(words)}
      {asks.length > 0 && (
        <>
          <span className="block small">{t('A veterinarian will be asked:')}</span>
          <ul className="lines small">
            {asks.map((ask) => (
              <li key={ask}>{t.known(ask)}</li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}
