import { useState } from 'react';
import type { PackageScreen } from '#libs/contracts/screens/reader';
import { Button } from '../../design/Button.js';
import { CheckboxGroup } from '../../design/Checkboxes.js';
import { Dialog } from '../../design/Dialog.js';
import { ErrorBar } from '../../design/Notice.js';
import { TextField } from '../../design/TextField.js';
import { t } from '../../words/t.js';
import { useSendBack } from './queries.js';
import type { PageSentence } from '#libs/words/de/staff/page-words';
import { named } from '../../words/named.js';

const usual = (['The dog lay turned', 'A part of the joint is outside the picture', 'Not sharp, the dog moved', 'Too light or too dark', 'No side marker, or the wrong one', 'A required view is missing'] satisfies PageSentence[]).map((words) => ({ id: words, name: words }));

export function SendBack({ screen, isOpen, onClose, onSent }: { screen: PackageScreen; isOpen: boolean; onClose: () => void; onSent: () => void }) {
  const send = useSendBack(screen.package);
  const [views, setViews] = useState<string[]>();
  const [reasons, setReasons] = useState<string[]>();
  const [own, setOwn] = useState<string>();
  const [tried, setTried] = useState(false);
  const offered = screen.images.filter((image, i, all) => all.findIndex((other) => other.view === image.view) === i).map((image) => ({ id: image.view, name: image.viewName }));
  const all = [...(reasons ?? []), ...(own?.trim() ? [own.trim()] : [])];

  const submit = () => {
    setTried(true);
    if (views?.length && all.length) send.mutate({ views, reasons: all }, { onSuccess: () => (onClose(), onSent()) });
  };

  return (
    <Dialog title={t('Send {number} back', { number: screen.number })} isOpen={isOpen} onClose={onClose}>
      <div className="form">
        <p>{t('The practice sees which views and why. New pictures need a second visit and a second sleep, so send back only what cannot be read; a joint without a value may carry a reason instead.')}</p>
        <CheckboxGroup label={t('Which views')} options={offered} value={views} onChange={setViews} {...(tried && !views?.length ? { error: t('Which views?') } : {})} />
        <CheckboxGroup label={t('Why')} options={named(usual)} value={reasons} onChange={setReasons} {...(tried && !all.length ? { error: t('Say why.') } : {})} />
        <TextField label={t('In your own words')} lines={2} value={own} onChange={setOwn} />
        <ErrorBar error={send.error} />
        <Button kind="ink" onPress={submit}>
          {t('Send back')}
        </Button>
      </div>
    </Dialog>
  );
}
