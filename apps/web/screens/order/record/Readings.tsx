import type { VisitView } from '#libs/contracts/screens/order';
import { Table } from '../../../design/Table.js';
import { plain, timeAt } from '../../../design/format.js';
import { t } from '../../../words/t.js';
import { gumsOf } from '../../watch/measures.js';

type Reading = VisitView['readings'][number];
const measured = (key: string, unit: string) => (r: Reading) => (r.values[key] === undefined || r.values[key] === null ? <span className="quiet">{t('not measured')}</span> : <span className="val">{`${plain(Number(r.values[key]))}${unit}`}</span>);

export function Readings({ visit, zone }: { visit: VisitView; zone: string }) {
  if (visit.readings.length === 0) return null;
  return (
    <section>
      <h3>{t('Readings while asleep')}</h3>
      <Table
        caption={t('Readings while asleep')}
        rows={visit.readings.toReversed()}
        rowKey={(r, i) => `${r.at}${i}`}
        columns={[
          { head: t('Time'), cell: (r) => timeAt(r.at, zone), rowHead: true },
          { head: t('Heart, /min'), cell: measured('heartRate', ''), right: true },
          { head: t('Breathing, /min'), cell: measured('breaths', ''), right: true },
          { head: t('Oxygen'), cell: measured('spo2', ' %'), right: true },
          { head: t('Temperature'), cell: measured('temperature', ' °C'), right: true },
          { head: t('Gums'), cell: (r) => gumsOf(r.values.gums) },
          { head: t('By'), cell: (r) => [r.values.note, r.by].filter(Boolean).map(String).join('; ') },
        ]}
      />
    </section>
  );
}
