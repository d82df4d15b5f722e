import { useEffect, useRef, useState, type MouseEvent } from 'react';
import { fetchFile, type SoFar } from '../api/fetch-file.js';
import { t } from '../words/t.js';
import { Button } from './Button.js';
import { fixed } from './format.js';
import { ErrorBar } from './Notice.js';
import { keepFile } from './keep-file.js';

type Props = { path: string; children: string; className?: string; name?: string; onDone?: () => void };

/** A file that the server makes on being asked; whoever waits for it sees how far it is and may stop it. Opened in another tab it is a plain link. */
export function Download({ path, children, className, name, onDone }: Props) {
  const [soFar, setSoFar] = useState<SoFar>();
  const [failure, setFailure] = useState<unknown>();
  const stopping = useRef<AbortController>(undefined);
  useEffect(() => () => stopping.current?.abort(), []);
  const fetchIt = async (event: MouseEvent) => {
    if (event.ctrlKey || event.metaKey || event.shiftKey) return;
    event.preventDefault();
    if (soFar) return;
    const over = (stopping.current = new AbortController());
    setFailure(undefined);
    setSoFar({ bytes: 0, of: undefined });
    try {
      const file = await fetchFile(path, name, setSoFar, over.signal);
      keepFile(file.content, file.name);
      onDone?.();
    } catch (error) {
      if (!over.signal.aborted) setFailure(error);
    } finally {
      setSoFar(undefined);
    }
  };
  return (
    <>
      <a className={className} href={`/api${path}`} download={name ?? true} onClick={(event) => void fetchIt(event)}>
        {children}
      </a>
      {soFar && (
        <span className="fetching">
          <progress {...(soFar.of && { value: Math.min(soFar.bytes, soFar.of), max: soFar.of })} aria-label={children} />
          <span className="num small">{howFar(soFar)}</span>
          <Button kind="text" onPress={() => stopping.current?.abort()}>{t('Stop')}</Button>
        </span>
      )}
      <span className="vh" role="status">{soFar && t('The file is being made and fetched.')}</span>
      <ErrorBar error={failure} />
    </>
  );
}

function howFar({ bytes, of }: SoFar): string {
  if (bytes === 0) return t('being made');
  const done = megabytes(bytes);
  return of ? t('{done} of about {all} MB', { done, all: megabytes(of) }) : t('{done} MB so far', { done });
}

const megabytes = (bytes: number): string => fixed(bytes / 1_000_000, 1);
