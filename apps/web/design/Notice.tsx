import type { ReactNode } from 'react';
import { isFailure } from '../api/failure.js';
import { t } from '../words/t.js';
import { capital } from './format.js';
import { useKnown } from './speech.js';

/** Something worth knowing that nobody has to act on. */
export const Notice = ({ children }: { children: ReactNode }) => (
  <div className="why" role="status">
    {children}
  </div>
);

/** What went wrong, in the server's words: the sentence, what is in the way, what changed, and that the entry was kept. */
export function ErrorBar({ error, children }: { error: unknown; children?: ReactNode }) {
  const known = useKnown();
  if (!error) return null;
  const body = isFailure(error) ? error.body : { message: t('This page broke. Reload it; what was stored is safe.') };
  return (
    <div className="err" role="alert">
      <b>{known(body.message)}</b>
      {'because' in body && body.because && <Lines lines={body.because.map((b) => known(b.words))} />}
      {'fields' in body && body.fields && <Lines lines={body.fields.map((f) => known(f.message)).filter((says) => says !== known(body.message))} />}
      {'changed' in body && body.changed && <Lines lines={body.changed.map((c) => `${factWords(c.type)}, ${c.by}`)} />}
      {children}
    </div>
  );
}

/** A page that could not be fetched still says what it would have been. */
export const NotShown = ({ title, error }: { title: string; error: unknown }) => (
  <>
    <div className="head">
      <h1>{title}</h1>
    </div>
    <ErrorBar error={error} />
  </>
);

function Lines({ lines }: { lines: string[] }) {
  const each = [...new Set(lines)];
  if (each.length === 0) return null;
  return (
    <ul className="lines">
      {each.map((words) => (
        <li key={words}>{words}</li>
      ))}
    </ul>
  );
}

/** A fact's name, read out: `readingTaken` is "Reading taken". */
const factWords = (type: string) => capital(type.replace(/([a-z])([A-Z])/g, '$1 $2').toLowerCase());
