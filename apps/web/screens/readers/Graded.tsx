import type { Round } from '#libs/contracts/readers';
import { Table } from '../../design/Table.js';
import { fixed } from '../../design/format.js';
import { t } from '../../words/t.js';
import { Told } from '../../words/Told.js';

type Graded = Extract<Round, { kind: 'graded' }>;

export function Graded({ round: { films, readers, observed, kappas, grades } }: { round: Graded }) {
  return (
    <>
      <p className="said">
        <Told strong="val" text={t('Two readers gave the same grade to **{share} of 100** films.', { share: Math.round(100 * observed) })} />
      </p>
      <p>
        {t('{films} films, {readers} readers, grades given: {grades}.', { films, readers, grades: grades.join(', ') })}{films < 30 && ` ${t('With fewer than 30 films this is wide.')}`}
      </p>
      <Table
        caption={t('Kappa')}
        rows={kappas}
        rowKey={(k) => k.what}
        columns={[
          { head: t('Kappa'), rowHead: true, cell: (k) => t.known(k.what) },
          { head: t('Found'), right: true, cell: (k) => (k.value === null ? t('cannot be said: one grade alone') : fixed(k.value, 2)) },
          { head: t('95 % interval'), cell: (k) => (k.mayBe ? t('{lower} to {upper}', { lower: fixed(k.mayBe.lower, 2), upper: fixed(k.mayBe.upper, 2) }) : t('none given')) },
        ]}
      />
      <p className="small quiet">
        {t('{source} 1 is full agreement, 0 what chance would give. With few films, or grades that hardly occur, it says little; names for its ranges are a convention, so none is given.', { source: readers === 2 ? t('Cohen, Psychol Bull 1968;70:213-220; error by Fleiss, Cohen and Everitt, Psychol Bull 1969;72:323-327.') : 'Fleiss, Psychol Bull 1971;76:378-382.' })}
      </p>
    </>
  );
}
