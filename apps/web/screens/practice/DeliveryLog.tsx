import { Link } from '@tanstack/react-router';
import type { Webhooks } from '#libs/contracts/integrations';
import { eventWords, TEST_EVENT } from '#libs/contracts/integrations';
import { Button } from '../../design/Button.js';
import { momentAt } from '../../design/format.js';
import { Table } from '../../design/Table.js';
import { t } from '../../words/t.js';
import { tryWords } from './line-words.js';

type Delivery = Webhooks['deliveries'][number];
type Props = { deliveries: Delivery[]; rows: Webhooks['rows']; zone: string; onAgain: (id: string) => void };

/** What was told, each try with what came of it; given up first. */
export function DeliveryLog({ deliveries, rows, zone, onAgain }: Props) {
  if (deliveries.length === 0) return null;
  const given = deliveries.filter(isGivenUp).length;
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
          { head: t('Is about'), rowHead: true, cell: (d) => (d.order ? <Link to="/orders/$order" params={{ order: d.order }} className="num">{d.accession}</Link> : t('No order')) },
          { head: t('What happened'), cell: (d) => <>{happened(d)}<span className="label as-address">{t('{moment}, to {name}', { moment: momentAt(d.at, zone), name: d.webhook })}</span></> },
          { head: t('Tries'), cell: (d) => <Tries of={d} address={rows.find((w) => w.id === d.of)?.address} zone={zone} /> },
          { head: t('Again'), cell: (d) => (d.state === 'givenUp' || d.state === 'delivered') && <Button aria-label={t('Send again to {name}: {event}, {order}', { name: d.webhook, event: happened(d), order: d.accession ?? t('No order') })} onPress={() => onAgain(d.id)}>{t('Send again')}</Button> },
        ]}
      />
    </details>
  );
}

/** A test call is not waited for: whoever asked for it saw what came of it. */
const isGivenUp = ({ event, state }: Delivery): boolean => state === 'givenUp' && event !== TEST_EVENT;

const happened = ({ event }: Delivery): string => (event === TEST_EVENT ? t('A test call') : t.known(eventWords[event]));

function Tries({ of, address, zone }: { of: Delivery; address: string | undefined; zone: string }) {
  const shown = of.tries.slice(-3);
  return (
    <>
      {of.tries.length > shown.length && <span className="label">{t('{n} tries; the last:', { n: of.tries.length })}</span>}
      <ul className="lines">
        {shown.map((one) => (
          <li key={one.at + one.words}>
            {momentAt(one.at, zone)}: {tryWords(one, address)}
          </li>
        ))}
      </ul>
      {isGivenUp(of) && <b className="asked">{t('Given up.')}</b>}
      {of.state === 'waiting' && <span className="label">{t('Next try {moment}.', { moment: momentAt(of.due, zone) })}</span>}
      {of.state === 'sending' && <span className="label">{t('Being told now.')}</span>}
    </>
  );
}
