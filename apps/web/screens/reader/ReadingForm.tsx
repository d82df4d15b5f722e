import { useRef, useState } from 'react';
import type { PackageScreen } from '#libs/contracts/screens/reader';
import { Button } from '../../design/Button.js';
import { ErrorBar } from '../../design/Notice.js';
import { TextField } from '../../design/TextField.js';
import { useMe } from '../../shell/me.js';
import { useCtrlEnter } from '../../shell/use-ctrl-enter.js';
import { t } from '../../words/t.js';
import { JointFields } from './JointFields.js';
import { SendBack } from './SendBack.js';
import { readEntry, type JointEntry, type JointProblems } from './joint-entry.js';
import { useSign } from './queries.js';

export function ReadingForm({ screen, onSigned }: { screen: PackageScreen; onSigned: () => void }) {
  const me = useMe();
  const sign = useSign(screen.package);
  const form = useRef<HTMLFormElement>(null);
  const [entries, setEntries] = useState<JointEntry[]>(screen.joints.map(({ joint }) => ({ joint, findings: {} })));
  const [comment, setComment] = useState<string>();
  const [ref, setRef] = useState<string>();
  const [signedBy, setSignedBy] = useState<string | undefined>(me.kind === 'reader' ? me.name : undefined);
  const [problems, setProblems] = useState<JointProblems[]>([]);
  const [unsigned, setUnsigned] = useState(false);
  const [sendingBack, setSendingBack] = useState(false);

  const submit = () => {
    const read = entries.map((entry) => readEntry(entry, screen.value, screen.findings));
    const joints = read.flatMap((r) => r.joint ?? []);
    setProblems(read.map((r) => r.problems ?? {}));
    setUnsigned(!signedBy);
    if (joints.length === entries.length && signedBy) sign.mutate({ joints, signedBy, ...(comment ? { comment } : {}), ...(ref ? { ref } : {}) }, { onSuccess: onSigned });
    else queueMicrotask(() => requestAnimationFrame(() => form.current?.querySelector<HTMLElement>('[data-invalid] input, [data-invalid] button, [data-invalid] [tabindex="0"]')?.focus()));
  };

  useCtrlEnter(() => !sendingBack && submit());

  return (
    <form
      ref={form}
      className="form reading"
      noValidate
      onSubmit={(e) => (e.preventDefault(), submit())}
    >
      <div className="joints wide">
        {screen.joints.map(({ joint, name }, i) => (
          <JointFields key={joint} name={name} screen={screen} entry={entries[i] ?? { joint, findings: {} }} onChange={(entry) => setEntries(entries.map((e, n) => (n === i ? entry : e)))} problems={problems[i] ?? {}} />
        ))}
      </div>
      <TextField label={t('Comment for the vet; the owner does not see it')} lines={3} value={comment} onChange={setComment} />
      <TextField label={t('Your own number for this reading, if you keep one')} value={ref} onChange={setRef} autoComplete="off" />
      <TextField label={t('Signed by')} value={signedBy} onChange={setSignedBy} autoComplete="name" {...(unsigned && !signedBy ? { error: t('Sign with your name.') } : {})} />
      <ErrorBar error={sign.error} />
      {problems.some((p) => Object.keys(p).length > 0) && (
        <p className="err" role="alert">
          <b>{t('Not signed yet.')}</b>{' '}{t('The marked places say what is missing. Nothing has been sent.')}
        </p>
      )}
      <div className="form-row">
        <Button type="submit" kind="ink" shortcut={t('Ctrl Enter')}>
          {t('Sign the reading')}
        </Button>
        <Button onPress={() => setSendingBack(true)}>{t('Send back with reasons')}</Button>
      </div>
      <p className="label">{t('Signing needs every joint: a value, or a reason why there is none. Nothing is sent before.')}</p>
      <SendBack screen={screen} isOpen={sendingBack} onClose={() => setSendingBack(false)} onSent={onSigned} />
    </form>
  );
}
