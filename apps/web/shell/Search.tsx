import { useNavigate } from '@tanstack/react-router';
import { useDeferredValue, useId, useRef, useState } from 'react';
import { useSearch } from '../api/board.js';
import { t } from '../words/t.js';
import { FoundList, type Found } from './FoundList.js';
import { useShortcut } from './use-shortcut.js';

/** One search for everything this practice may see; `/` brings you here from anywhere. */
export function Search() {
  const [text, setText] = useState('');
  const [open, setOpen] = useState(false);
  const [on, setOn] = useState(0);
  const input = useRef<HTMLInputElement>(null);
  const listId = useId();
  const q = useDeferredValue(text.trim());
  const { data } = useSearch(q);
  const navigate = useNavigate();
  useShortcut('/', () => input.current?.focus());

  const found: Found[] = [
    ...(data?.orders ?? []).map((o) => ({ kind: 'order' as const, id: o.id, name: o.accession, line: o.line })),
    ...(data?.dogs ?? []).map((d) => ({ kind: 'dog' as const, id: d.id, name: d.name, line: d.line })),
  ];
  const shown = open && q.length >= 2 && data !== undefined;
  const close = () => {
    setOpen(false);
    setText('');
    setOn(0);
  };
  const go = (f: Found) => {
    close();
    void (f.kind === 'order' ? navigate({ to: '/orders/$order', params: { order: f.id } }) : navigate({ to: '/dogs/$dog', params: { dog: f.id } }));
  };

  return (
    <form
      className="find"
      role="search"
      onSubmit={(e) => {
        e.preventDefault();
        const first = found[on];
        if (first) go(first);
      }}
      onBlur={(e) => !e.currentTarget.contains(e.relatedTarget) && setOpen(false)}
    >
      <input
        ref={input}
        type="search"
        role="combobox"
        aria-label={t('Find a dog, person or order')}
        aria-expanded={shown}
        aria-controls={listId}
        aria-activedescendant={shown && found[on] ? `${listId}-${on}` : undefined}
        autoComplete="off"
        placeholder={t('Transponder, dog, owner, phone or order number')}
        value={text}
        onChange={(e) => {
          setText(e.target.value);
          setOn(0);
          setOpen(true);
        }}
        onFocus={() => setOpen(true)}
        onKeyDown={(e) => {
          if (e.key === 'Escape') close();
          if (e.key === 'ArrowDown') setOn((n) => Math.min(n + 1, found.length - 1));
          if (e.key === 'ArrowUp') setOn((n) => Math.max(n - 1, 0));
          if (e.key === 'ArrowDown' || e.key === 'ArrowUp') e.preventDefault();
        }}
      />
      <kbd aria-hidden="true">/</kbd>
      <FoundList id={listId} shown={shown} found={found} on={on} asked={q} go={go} />
    </form>
  );
}
