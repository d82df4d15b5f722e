import { useRef, useState } from 'react';
import type { OrderScreen } from '#libs/contracts/screens/order';
import { Button } from '../../design/Button.js';
import { ErrorBar } from '../../design/Notice.js';
import { list } from '../../design/format.js';
import { useShortcut } from '../../shell/use-shortcut.js';
import { t } from '../../words/t.js';
import { studyName } from '../order/next-actions.js';
import { ReasonKeys } from './ReasonKeys.js';
import { useVerdict } from './use-verdict.js';
import type { Exposure } from './view-rows.js';

/** Accept or retake with one key; a retake wants its reasons first. Taken back the same way, until the films are sealed. */
export function Verdict({ screen, film }: { screen: OrderScreen; film: Exposure }) {
  const verdict = useVerdict(screen, film);
  const [reasons, setReasons] = useState<string[]>([]);
  const [says, setSays] = useState('');
  const group = useRef<HTMLFieldSetElement>(null);
  const offered = [...new Set(screen.studies.filter((s) => film.serves.includes(s.id)).flatMap((s) => s.views.find((v) => v.view === film.view)?.checklist ?? []))];

  const give = async (said: 'accept' | 'retake' | 'undecided', why: string[], words: string) => {
    if (verdict.busy) return;
    if (verdict.mayNot) return setSays(verdict.mayNot);
    setSays('');
    if (!(await verdict.give(said, why))) return;
    setSays(words);
    setReasons([]);
  };
  const accept = () => void give('accept', [], t('Accepted.'));
  const retake = () => {
    if (reasons.length > 0) return void give('retake', reasons.map((r) => r.slice(0, 60)), t('To be taken again.'));
    setSays(t('Why a retake? Choose one or more of the reasons, then press R again.'));
    group.current?.querySelector('button')?.focus();
  };
  const undo = () => (film.verdicts.length > 0 ? void give('undecided', [], t('Taken back. The picture waits to be judged.')) : setSays(t('This picture has no verdict to take back.')));
  useShortcut('a', accept);
  useShortcut('r', retake);
  useShortcut('z', undo);

  return (
    <section className="verdict" aria-label={t('Verdict')}>
      <h2>{t('This picture')}</h2>
      <p className="small">{film.verdicts.length === 0 ? t('Not judged yet.') : film.verdicts.map((v) => verdictWords(v, studyName(screen, v.study))).join(' ')}</p>
      <div className="verdict-keys">
        <Button kind="ink" size="tablet" shortcut="A" onPress={accept}>
          {t('Accept')}
        </Button>
        <Button size="tablet" shortcut="R" onPress={retake}>
          {t('Retake')}
        </Button>
        <Button size="tablet" shortcut="Z" onPress={undo}>
          {t('Undo')}
        </Button>
      </div>
      <ReasonKeys ref={group} offered={offered} chosen={reasons} onChoose={setReasons} />
      <p role="status" className="small">
        {verdict.busy ? t('Keeping …') : says}
      </p>
      <ErrorBar error={verdict.error} />
      <p className="label">{t('May be undone until the films are sealed. All are sent, this one too.')}</p>
    </section>
  );
}

function verdictWords({ verdict, reasons }: Exposure['verdicts'][number], study: string): string {
  if (verdict === 'accept') return t('Accepted for {study}.', { study });
  return reasons.length > 0 ? t('Retake for {study}: {reasons}.', { study, reasons: list(reasons) }) : t('Retake for {study}.', { study });
}
