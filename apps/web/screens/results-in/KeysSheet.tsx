import { newKey, type CentreKeyRow, type KeyMade, type ResultsInScreen } from '#libs/contracts/results-in';
import { Button } from '../../design/Button.js';
import { Empty } from '../../design/Empty.js';
import { ErrorBar } from '../../design/Notice.js';
import { Select } from '../../design/Select.js';
import { Sheet } from '../../design/Sheet.js';
import { Table } from '../../design/Table.js';
import { momentAt } from '../../design/format.js';
import { useMe } from '../../shell/me.js';
import { t } from '../../words/t.js';
import { AddForm } from '../practice/AddForm.js';
import { useEndKey, useMakeKey } from './queries.js';

/** What centres' computers sign with: two a centre at most, so that one takes over from the other without a gap. */
export function KeysSheet({ keys, lead }: { keys: NonNullable<ResultsInScreen['keys']>; lead: boolean }) {
  const { zone } = useMe();
  const make = useMakeKey(lead);
  const end = useEndKey(lead);
  const when = (at: string | null) => (at ? momentAt(at, zone) : t('never'));
  return (
    <Sheet title={t('Keys of the centres’ computers')}>
      <p className="small">
        {t('A computer that signs with a key sends readings to this address:')} <b className="num address">{keys.address}</b> {t('How it signs, and what it sends, is in the documentation under “Readings that come in”.')}
      </p>
      {keys.rows.length === 0 ? (
        <Empty title={t('No key yet')}>{t('Without one, a centre’s readings come on the reader’s page, in a file or by post.')}</Empty>
      ) : (
        <Table<CentreKeyRow>
          caption={t('Keys')}
          rows={keys.rows}
          rowKey={(k) => k.id}
          columns={[
            { head: t('Centre'), rowHead: true, cell: (k) => k.centre },
            { head: t('Key'), cell: (k) => <span className="num key-id">{k.id}</span> },
            { head: t('Made'), cell: (k) => <>{momentAt(k.at, zone)}<span className="block small quiet">{k.by}</span></> },
            { head: t('Last used'), cell: (k) => when(k.lastUsedAt) },
            { head: t('Last refused message'), cell: (k) => when(k.lastRefusedAt) },
            { head: t('State'), cell: (k) => (k.endedAt ? t('Ended {at}', { at: momentAt(k.endedAt, zone) }) : <>{k.secretLost ? <span className="lost">{t('Its secret cannot be read any more, and its messages are refused: end it and make another, or whoever runs the server brings the key of the secrets back.')}</span> : t('Valid')} <Button aria-label={t('End the key {key} of {centre}', { key: k.id.slice(0, 8), centre: k.centre })} onPress={() => end.mutate(k.id)}>{t('End it')}</Button></>) },
          ]}
        />
      )}
      <ErrorBar error={end.error} />
      {make.data && <Shown made={make.data} onKept={make.reset} />}
      <AddForm opens={t('Make a key')} saves={t('Make it')} schema={newKey} add={make}>
        {(entry) => <Select label={t('Centre')} options={keys.centres} {...entry.field('centre')} />}
      </AddForm>
    </Sheet>
  );
}

/** The only time that the secret is shown. */
function Shown({ made, onKept }: { made: KeyMade; onKept: () => void }) {
  return (
    <div className="why key-made" role="status">
      <p><b>{t('Write this down now. The secret is shown this once; it cannot be shown again.')}</b></p>
      <dl className="facts">
        <dt>{t('Key')}</dt>
        <dd className="num key-id">{made.key}</dd>
        <dt>{t('Secret')}</dt>
        <dd className="num key-id">{made.secret}</dd>
      </dl>
      <p className="small">{t('Give it to the centre by a way that nobody else reads: by telephone, or on paper.')}</p>
      <Button onPress={onKept}>{t('I have it')}</Button>
    </div>
  );
}
