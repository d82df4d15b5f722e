import { Link } from '@tanstack/react-router';
import type { Webhooks } from '#libs/contracts/integrations';
import { eventWords } from '#libs/contracts/integrations';
import { Button } from '../../design/Button.js';
import { momentAt } from '../../design/format.js';
import { Table } from '../../design/Table.js';
import { t } from '../../words/t.js';

type Delivery = Webhooks['deliveries'][number];
type Props = { deliveries: Delivery[]; zone: string; onAgain: (id: string) => void };

/** What was told, each try with what came of it; given up first. */
export function DeliveryLog({ deliveries, zone, onAgain }: Props) {
  if (deliveries.length === 0) return null;
  const given = deliveries.filter((d) => d.state === 'givenUp').length;
  return (
    <details className="text-line" open={given > 0}>
      <summary>
        {t('What was told lately')}
        {given > 0 && <span className="asked"> {t('{n, plural, one {One call was given up.} other {# calls were given up.}}', { n: given })}</span>}
      </summary>
      <Table<Delivery>
        caption={t('Calls of other programs')}
        rows={deliveries}
        rowKey={(d) => d.id}
        columns={[
          { head: t('Is about'), rowHead: true, cell: (d) => <Link to="/orders/$order" params={{ order: d.order }} className="num">{d.accession}</Link> },
          { head: t('What happened'), cell: (d) => <>{t.known(eventWords[d.event])}<span className="label as-address">{t('{moment}, to {name}', { moment: momentAt(d.at, zone), name: d.webhook })}</span></> },
          { head: t('Tries'), cell: (d) => <Tries of={d} zone={zone} /> },
          { head: t('Again'), cell: (d) => (d.state === 'givenUp' || d.state === 'delivered') && <Button aria-label={t('Send again to {name}: {event}, {order}', { name: d.webhook, event: t.known(eventWords[d.event]), order: d.accession })} onPress={() => onAgain(d.id)}>{t('Send again')}</Button> },
        ]}
      />
    </details>
  );
}

function Tries({ of, zone }: { of: Delivery; zone: string }) {
  const shown = of.tries.slice(-3);
  return (
    <>
      {of.tries.length > shown.length && <span className="label">{t('{n} tries; the last:', { n: of.tries.length })}</span>}
      <ul className="lines">
        {shown.map((one) => (
          <li key={one.at + one.words}>
            {momentAt(one.at, zone)}: {t.known(one.words)}
          </li>
        ))}
      </ul>
      {of.state === 'givenUp' && <b className="asked">{t('Given up.')}</b>}
      {of.state === 'waiting' && <span className="label">{t('Next try {moment}.', { moment: momentAt(of.due, zone) })}</span>}
      {of.state === 'sending' && <span className="label">{t('Being told now.')}</span>}
    </>
  );
}
