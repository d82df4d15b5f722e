import { Table } from '../../design/Table.js';
import { capital } from '../../design/format.js';
import { t } from '../../words/t.js';
import { between, written, type Values } from './figures.js';

export function Quantiles({ values }: { values: Values }) {
  return (
    <>
      <p className="small quiet">{t('{value}. In brackets the 95 % interval of such dogs; no shape of the values is assumed. The worse of two joints is a little higher than either, by the reading’s error alone.', { value: capital(values.name) })}</p>
      <Table
        caption={t('How the {value} lies', { value: values.name })}
        rows={values.quantiles}
        rowKey={(row) => row.words}
        columns={[
          { head: t('Of the dogs'), rowHead: true, cell: (row) => row.words },
          ...values.heads.map((head, i) => ({ head: capital(head), cell: (row: Values['quantiles'][number]) => <><span className="val">{written(row.figures[i]!.value, values)}</span> <span className="label nowrap">({between(row.figures[i]!.interval, values)})</span></> })),
        ]}
      />
    </>
  );
}
