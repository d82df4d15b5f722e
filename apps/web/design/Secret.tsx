import { useRef, useState } from 'react';
import { t } from '../words/t.js';
import { Button } from './Button.js';

/** Shown for once, and to be taken along: by a button, or by hand where the browser lets no page write there. */
export function Secret({ children: secret, of }: { children: string; of: string }) {
  const text = useRef<HTMLElement>(null);
  const [says, setSays] = useState('');
  const copy = async () => {
    getSelection()?.selectAllChildren(text.current!);
    // a page that came without https has no clipboard
    const written = await (navigator.clipboard as Clipboard | undefined)?.writeText(secret).then(() => true, () => false);
    setSays(written ? t('Copied.') : t('It is marked: copy it with the keys of your keyboard.'));
  };
  return (
    <p className="secret">
      <code ref={text}>{secret}</code> <Button aria-label={t('Copy {of}', { of })} onPress={() => void copy()}>{t('Copy')}</Button> <span role="status">{says}</span>
    </p>
  );
}

/** What an answer showed once stays until the page is left, whatever is asked meanwhile. */
export function useShownOnce<T>(...answers: (T | null | undefined)[]): T | null {
  const [shown, show] = useState<{ seen: (T | null | undefined)[]; value: T | null }>({ seen: [], value: null });
  const fresh = answers.find((answer, i) => answer && answer !== shown.seen[i]);
  if (fresh) show({ seen: answers, value: fresh });
  return shown.value;
}
