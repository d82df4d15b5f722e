import type { ExplainedStudy } from '#libs/contracts/help';
import { Sheet } from '../../design/Sheet.js';
import { list } from '../../design/format.js';
import { t } from '../../words/t.js';

export function StudyHelp({ study }: { study: ExplainedStudy }) {
  return (
    <Sheet title={study.deskName} beside={t('{study}, version {version}', { study: study.name, version: study.version })}>
      <p><b>{t('What is measured: {name}.', { name: study.measure.name })}</b> {study.measure.says}</p>
      <p>{t('{dog} A dog must be {youngest} old, some breeds older.', { dog: study.dog, youngest: study.youngest })}</p>
      <p><b>{t('How far two readings differ.')}</b> {study.doubt}</p>
      <p><b>{t('In a breed’s figures.')}</b> {study.counts}</p>
      <p><b>{t('A joint may have no value:')}</b> {list(study.noValue)}.</p>
      <h3>{t('Views')}</h3>
      {study.views.map((v) => (
        <details key={v.label}>
          <summary>{v.label}{!v.required && `, ${t('recommended')}`}</summary>
          <ul className="lines">{v.checklist.map((c) => <li key={c}>{c}</li>)}</ul>
        </details>
      ))}
      <details>
        <summary>{t('Where this comes from')}</summary>
        <ul className="lines">{study.sources.map((s) => <li key={s.what}>{s.what}: <span className="quiet">{s.citation}</span></li>)}</ul>
      </details>
    </Sheet>
  );
}
