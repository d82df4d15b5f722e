import type { Keys } from '#libs/contracts/integrations';
import { newKey, scopes, scopeWords } from '#libs/contracts/integrations';
import { Button } from '../../design/Button.js';
import { CheckboxGroup } from '../../design/Checkboxes.js';
import { Empty, Loading } from '../../design/Empty.js';
import { fullDay, dayAt, momentAt } from '../../design/format.js';
import { ErrorBar, Notice } from '../../design/Notice.js';
import { Secret, useShownOnce } from '../../design/Secret.js';
import { Sheet } from '../../design/Sheet.js';
import { Table } from '../../design/Table.js';
import { TextField } from '../../design/TextField.js';
import { Told } from '../../words/Told.js';
import { t } from '../../words/t.js';
import { AddForm } from './AddForm.js';
import { useEndKey, useKeys } from './integrations-queries.js';

type Row = Keys['rows'][number];

/** Other programs that read orders and results by a key of their own. */
export function KeysSheet({ zone }: { zone: string }) {
  const { data, error, add } = useKeys();
  const end = useEndKey();
  const made = useShownOnce(add.data?.made);
  return (
    <Sheet title={t('Programs that read here')}>
      <ErrorBar error={error ?? end.error} />
      {!data ? (
        !error && <Loading what={t('the keys')} />
      ) : (
        <>
          {made && <Made made={made} />}
          {data.rows.length === 0 ? (
            <Empty title={t('No key yet')}>{t('With a key, your practice software can read orders and results in the form that such programs share (FHIR). It reads what this practice sees, and changes nothing.')}</Empty>
          ) : (
            <Table<Row>
              caption={t('Keys of other programs')}
              rows={data.rows}
              rowKey={(k) => k.id}
              columns={[
                { head: t('Program'), rowHead: true, cell: (k) => k.name },
                { head: t('May'), cell: (k) => <Scopes of={k} /> },
                { head: t('Made'), cell: (k) => `${fullDay(dayAt(k.at, zone))}, ${k.by}` },
                { head: t('Last used'), cell: (k) => (k.lastUsed ? momentAt(k.lastUsed, zone) : t('Not yet')) },
                { head: t('Key'), cell: (k) => <Button aria-label={t('End the key of {name} now', { name: k.name })} onPress={() => end.mutate(k.id)}>{t('End it')}</Button> },
              ]}
            />
          )}
          <p className="small">
            <Told text={t('Programs ask at **{address}**.', { address: data.address })} strong="num" />
          </p>
          <AddForm opens={t('Make a key')} saves={t('Make this key')} schema={newKey} add={add}>
            {(entry) => (
              <>
                <TextField label={t('Which program, and where it runs')} {...entry.field('name')} autoComplete="off" />
                <CheckboxGroup label={t('It may')} options={scopes.map((id) => ({ id, name: t.known(scopeWords[id]) }))} value={entry.values.scopes} onChange={(chosen) => entry.set('scopes', chosen)} error={entry.error('scopes')} />
              </>
            )}
          </AddForm>
        </>
      )}
    </Sheet>
  );
}

const Scopes = ({ of }: { of: Row }) => (
  <ul className="lines">
    {of.scopes.map((scope) => (
      <li key={scope}>{t.known(scopeWords[scope])}</li>
    ))}
  </ul>
);

function Made({ made: { name, key } }: { made: NonNullable<Keys['made']> }) {
  return (
    <Notice>
      <p>
        <b>{t('The key of {name}.', { name })}</b> {t('Copy it into that program now. It is kept nowhere here and not shown again; if it gets lost, end it and make another.')}
      </p>
      <Secret of={t('the key of {name}', { name })}>{key}</Secret>
    </Notice>
  );
}
