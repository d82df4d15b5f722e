import { useEffect, useRef, useState } from 'react';
import type { OwnerPage } from '#libs/contracts/screens/owner';
import { Button } from '../../design/Button.js';
import { Dialog } from '../../design/Dialog.js';
import { ErrorBar, Notice } from '../../design/Notice.js';
import { TextField } from '../../design/TextField.js';
import { useWords } from '../../words/Speak.js';
import { Told } from '../../words/Told.js';
import { PurposeText } from './PurposeText.js';
import { purposesOf, saidWords, type AskedPurpose } from './consent-purposes.js';
import { cannotBeUndone } from './undone.js';
import { useTellWithdrawal } from './queries.js';

/** What was agreed to, word for word, and the way to change it. */
export function Decided({ page, signed, onAgain }: { page: OwnerPage; signed: boolean; onAgain: (key: string) => void }) {
  const t = useWords();
  const [taking, setTaking] = useState<AskedPurpose | null>(null);
  const section = useRef<HTMLElement>(null);
  // The sheet that was signed is gone from the page: take the reader to what became of it.
  useEffect(() => {
    if (signed) section.current?.focus();
  }, [signed]);
  const decided = purposesOf(page, t).filter((p) => p.answered);
  if (decided.length === 0) return null;
  return (
    <section aria-labelledby="decided" ref={section} tabIndex={-1}>
      <h2 id="decided">{t('What you decided')}</h2>
      {signed && <Notice>{t('Signed. Your decisions have reached the practice; you can change them here.')}</Notice>}
      {decided.map((p) => (
        <details key={p.key} className="decided">
          <summary>
            <b>{p.title}</b> <span className="quiet">{t(saidWords(p.answered))}</span>
          </summary>
          <PurposeText asked={p} />
          {p.answered === 'yes' ? <Button onPress={() => setTaking(p)}>{t('Take back my yes')}</Button> : <Button onPress={() => onAgain(p.key)}>{t('Decide again')}</Button>}
        </details>
      ))}
      {taking && <TakeBack asked={taking} onClose={() => setTaking(null)} />}
    </section>
  );
}

function TakeBack({ asked, onClose }: { asked: AskedPurpose; onClose: () => void }) {
  const t = useWords();
  const tell = useTellWithdrawal();
  const [why, setWhy] = useState<string>();
  const { purpose, subject } = asked;
  return (
    <Dialog title={t('Take back your yes')} isOpen onClose={onClose}>
      <div className="own-dialog">
        <p>
          <Told text={t('**{purpose}.** The practice sees it at once. You need not say why.', { purpose: asked.title })} />
        </p>
        <p className="why">{t(cannotBeUndone[purpose])}</p>
        <TextField label={t('Why, if you like to say')} lines={2} value={why} onChange={setWhy} />
        <ErrorBar error={tell.error} />
        <Button kind="ink" onPress={() => tell.mutate({ purpose, ...(subject ? { subject } : {}), ...(why ? { why } : {}) }, { onSuccess: onClose })}>
          {t('Take it back')}
        </Button>
      </div>
    </Dialog>
  );
}
