import { useEffect, useRef, useState } from 'react';
import type { OwnerPage } from '#libs/contracts/screens/owner';
import { Button } from '../../design/Button.js';
import { ErrorBar } from '../../design/Notice.js';
import { RadioChoice, yesNo } from '../../design/RadioChoice.js';
import { SignatureField } from '../../design/SignatureField.js';
import { useWords } from '../../words/Speak.js';
import { Told } from '../../words/Told.js';
import { PurposeText } from './PurposeText.js';
import { Emergency } from './Emergency.js';
import { blankSheet, readSheet, type ConsentSheet, type SheetProblems } from './consent-sheet.js';
import { mayAsk, purposesOf } from './consent-purposes.js';
import { useTellConsents } from './queries.js';

/** One sheet and one signature; each purpose keeps its own yes or no. */
export function Consents({ page, first, again, onDone }: { page: OwnerPage; first: boolean; again: readonly string[]; onDone: () => void }) {
  const t = useWords();
  const tell = useTellConsents();
  const [sheet, setSheet] = useState<ConsentSheet>(blankSheet);
  const [problems, setProblems] = useState<SheetProblems>({});
  const section = useRef<HTMLElement>(null);
  const change = (part: Partial<ConsentSheet>) => setSheet((was) => ({ ...was, ...part }));
  const asked = purposesOf(page, t).filter((p) => (!p.answered && mayAsk(page)) || again.includes(p.key));

  useEffect(() => {
    if (Object.keys(problems).length) section.current?.querySelector<HTMLElement>('[data-invalid] input, [data-invalid] textarea, [data-sheet-problem]')?.focus();
  }, [problems]);

  if (asked.length === 0) return null;
  const sign = () => {
    const read = readSheet(sheet, page, t);
    setProblems(read.problems ?? {});
    if (read.request) tell.mutate(read.request, { onSuccess: () => (setSheet(blankSheet), onDone()) });
  };

  return (
    <section aria-labelledby="decide" id="consent" ref={section}>
      <h2 id="decide">{t('Read and decide')}</h2>
      <p>{t('Each of these is a question of its own. You may say yes to one and no to another. Ask us before you sign; nobody is cross about a no.')}</p>
      {asked.map((p) => (
        <div className="purpose" key={p.key}>
          <h3>{p.title}</h3>
          <PurposeText asked={p} />
          <RadioChoice label={t('Your answer: {question}', { question: p.title })} labelHidden value={sheet.choices[p.key]} onChange={(answer) => change({ choices: { ...sheet.choices, [p.key]: answer } })} options={yesNo} size="tablet" />
          {p.key === 'sedation' && sheet.choices['sedation'] === 'yes' && (
            <Emergency sheet={sheet} onChange={change} problems={problems} currency={page.estimate?.currency ?? ''} dog={page.dog.name} />
          )}
        </div>
      ))}
      <SignatureField value={sheet.signature} onChange={(signature) => change({ signature })} error={problems.signature} />
      <p className="quiet small">{t(page.signer.role === 'owner' ? 'You sign as owner: {name}.' : 'You sign as agent of the owner: {name}.', { name: page.signer.name })}</p>
      {Object.keys(problems).length > 0 && (
        <p className="err" role="alert" tabIndex={-1} data-sheet-problem>
          <Told text={t('**Not signed yet.** {problem}', { problem: problems.choices ?? t('The marked places above say what is missing.') })} />
        </p>
      )}
      <ErrorBar error={tell.error} />
      <Button kind={first ? 'elder' : 'plain'} onPress={sign}>
        {t('Sign my answers')}
      </Button>
    </section>
  );
}
