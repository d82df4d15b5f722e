import type { Webhooks } from '#libs/contracts/integrations';
import { eventWords, newWebhook, orderEvents, TEST_EVENT } from '#libs/contracts/integrations';
import { Button } from '../../design/Button.js';
import { CheckboxGroup } from '../../design/Checkboxes.js';
import { Empty, Loading } from '../../design/Empty.js';
import { momentAt } from '../../design/format.js';
import { ErrorBar, Notice } from '../../design/Notice.js';
import { Secret, useShownOnce } from '../../design/Secret.js';
import { Sheet } from '../../design/Sheet.js';
import { Table } from '../../design/Table.js';
import { TextField } from '../../design/TextField.js';
import { t } from '../../words/t.js';
import { AddForm } from './AddForm.js';
import { DeliveryLog } from './DeliveryLog.js';
import { tryWords } from './line-words.js';
import { useChangeWebhooks, useWebhooks } from './integrations-queries.js';

type Row = Webhooks['rows'][number];

/** Other programs that are called when something happens to an order. */
export function WebhooksSheet({ zone }: { zone: string }) {
  const { data, error, add } = useWebhooks();
  const change = useChangeWebhooks();
  const secret = useShownOnce(add.data?.secret, change.data?.secret);
  return (
    <Sheet title={t('Programs that are told')}>
      <ErrorBar error={error ?? change.error} />
      {!data ? (
        !error && <Loading what={t('the addresses')} />
      ) : (
        <>
          {secret && (
            <Notice>
              <p>
                <b>{t('The secret of {name}.', { name: secret.name })}</b> {t('Copy it into that program now; by it, that program knows that a call came from here. It is not shown again.')}
              </p>
              <Secret of={t('the secret of {name}', { name: secret.name })}>{secret.secret}</Secret>
            </Notice>
          )}
          {data.rows.length === 0 ? (
            <Empty title={t('No address yet')}>{t('Another program can be called when a visit is booked, films are sent or a result is accepted (a webhook). It is told the order’s number and what happened, and no name.')}</Empty>
          ) : (
            <Table<Row>
              caption={t('Addresses that are called')}
              rows={data.rows}
              rowKey={(w) => w.id}
              columns={[
                { head: t('Program'), rowHead: true, cell: (w) => <Named row={w} test={data.deliveries.find((d) => d.of === w.id && d.event === TEST_EVENT)} zone={zone} /> },
                { head: t('Is told when'), cell: (w) => <Events of={w} /> },
                {
                  head: t('Change'),
                  cell: (w) => (
                    <div className="acts">
                      <Button aria-label={t('Send a test call to {name}', { name: w.name })} onPress={() => change.mutate(`${w.id}/test`)}>{t('Send a test call')}</Button>
                      <Button aria-label={t('New secret for {name}', { name: w.name })} onPress={() => change.mutate(`${w.id}/secret`)}>{t('New secret')}</Button>
                      <Button aria-label={t('Tell {name} nothing from now on', { name: w.name })} onPress={() => change.mutate(`${w.id}/end`)}>{t('End it')}</Button>
                    </div>
                  ),
                },
              ]}
            />
          )}
          <AddForm opens={t('Add an address')} saves={t('Call this address')} schema={newWebhook} add={add}>
            {(entry) => (
              <>
                <TextField label={t('Which program')} {...entry.field('name')} autoComplete="off" />
                <TextField label={t('Address that is called')} {...entry.field('address')} autoComplete="off" help={t('Begins with https:// and leads into the open internet.')} />
                <CheckboxGroup label={t('It is told when')} options={orderEvents.map((id) => ({ id, name: t.known(eventWords[id]) }))} value={entry.values.events} onChange={(chosen) => entry.set('events', chosen)} error={entry.error('events')} />
              </>
            )}
          </AddForm>
          <DeliveryLog deliveries={data.deliveries} rows={data.rows} zone={zone} onAgain={(id) => change.mutate(`deliveries/${id}/again`)} />
        </>
      )}
    </Sheet>
  );
}

const Named = ({ row, test, zone }: { row: Row; test: Webhooks['deliveries'][number] | undefined; zone: string }) => (
  <>
    {row.name}
    <span className="label num as-address">{row.address}</span>
    {row.earlierUntil && Date.parse(row.earlierUntil) > Date.now() && <span className="label">{t('The secret before holds until {moment}.', { moment: momentAt(row.earlierUntil, zone) })}</span>}
    {row.secretLost && <span className="asked">{t('Its secret cannot be read any more: it was sealed with a key that this server does not have. Calls wait. Make a new secret, or whoever runs the server brings the key back.')}</span>}
    <span role="status" className="label">{test && `${t('Test call, {moment}:', { moment: momentAt(test.at, zone) })} ${testWords(test, row.address)}`}</span>
  </>
);

const Events = ({ of }: { of: Row }) => (
  <ul className="lines">
    {of.events.map((event) => (
      <li key={event}>{t.known(eventWords[event])}</li>
    ))}
  </ul>
);

function testWords({ tries }: Webhooks['deliveries'][number], address: string): string {
  const last = tries.at(-1);
  return last ? tryWords(last, address) : t('on its way.');
}
