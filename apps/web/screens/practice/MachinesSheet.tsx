import type { Machines } from '#libs/contracts/gateway';
import { newMachine } from '#libs/contracts/gateway';
import { Button } from '../../design/Button.js';
import { Empty, Loading } from '../../design/Empty.js';
import { ErrorBar } from '../../design/Notice.js';
import { NumberField } from '../../design/NumberField.js';
import { Sheet } from '../../design/Sheet.js';
import { Table } from '../../design/Table.js';
import { TextField } from '../../design/TextField.js';
import { momentAt } from '../../design/format.js';
import { t } from '../../words/t.js';
import { AddForm } from './AddForm.js';
import { useEndMachine, useMachines } from './queries.js';
import { Told } from '../../words/Told.js';

/** X-ray machines that ask for the worklist and send images, and what to enter in their settings. */
export function MachinesSheet({ edits, zone }: { edits: boolean; zone: string }) {
  const { data, error, add } = useMachines();
  const end = useEndMachine();
  return (
    <Sheet title={t('X-ray machines on the network')}>
      <ErrorBar error={error ?? end.error} />
      {!data ? (
        !error && <Loading what={t('the machines')} />
      ) : (
        <>
          {data.rows.length === 0 ? (
            <Empty title={t('No machine yet')}>{t('A machine that is entered here finds the dogs of the day in its own list, and its images come to their orders by themselves.')}</Empty>
          ) : (
            <Table<Machines['rows'][number]>
              caption={t('X-ray machines')}
              rows={data.rows}
              rowKey={(m) => m.id}
              columns={[
                { head: t('Room'), rowHead: true, cell: (m) => m.name },
                { head: t('Calls itself'), cell: (m) => <span className="num">{m.aeTitle}</span> },
                { head: t('Stands at'), cell: (m) => <span className="num">{m.address}</span> },
                { head: t('Asked last whether its images are safe'), cell: (m) => (m.asked ? <Asked asked={m.asked} port={m.port} zone={zone} /> : <span className="label">{t('Never')}</span>) },
                ...(edits ? [{ head: t('List'), cell: (m: Machines['rows'][number]) => <Button aria-label={t('Turn {machine} away from now on', { machine: m.name })} onPress={() => end.mutate(m.id)}>{t('Take off')}</Button> }] : []),
              ]}
            />
          )}
          <p className="small">
            <Told strong="num" text={t('In the machine’s own settings this program is called **{name}**, at port **{port}** of the server’s address, for the worklist, for sending images, and for asking whether they are safe (storage commitment).', { name: data.called, port: data.port })} />
          </p>
          {edits && (
            <AddForm opens={t('Add a machine')} saves={t('Add this')} schema={newMachine} add={add}>
              {(entry) => (
                <>
                  <TextField label={t('Room or machine')} {...entry.field('name')} autoComplete="off" />
                  <TextField label={t('What it calls itself (AE title)')} {...entry.field('aeTitle')} autoComplete="off" help={t('Great and small letters count.')} />
                  <TextField label={t('Its IP address')} {...entry.field('address')} autoComplete="off" help={t('Such as 192.168.10.20, or a network such as 192.168.10.0/24.')} />
                  <NumberField label={t('Port at which it hears which images are safe')} {...entry.field('port')} help={t('Of its storage commitment. Empty: it is told on the same connection.')} />
                </>
              )}
            </AddForm>
          )}
        </>
      )}
    </Sheet>
  );
}

type Question = NonNullable<Machines['rows'][number]['asked']>;

function Asked({ asked: { at, images, unsafe, told }, port, zone }: { asked: Question; port: number | null; zone: string }) {
  const when = momentAt(at, zone);
  const found = unsafe === null ? t('{when}: being looked into.', { when }) : unsafe === 0 ? t('{when}: all {images} are safe here.', { when, images }) : t('{when}: {unsafe} of {images} not safe here. The machine must keep {unsafe, plural, one {it} other {them}}.', { when, unsafe, images });
  const untold = port === null ? t('It could not be told yet: enter the port at which it listens, or ask again at the machine.') : t('It could not be told yet; it is called at port {port}.', { port: port });
  return unsafe !== null && !told ? `${found} ${untold}` : found;
}
