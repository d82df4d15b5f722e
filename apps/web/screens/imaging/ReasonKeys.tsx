import { useEffect, useRef, type Ref } from 'react';
import { t } from '../../words/t.js';

type Props = { ref: Ref<HTMLFieldSetElement>; offered: readonly string[]; chosen: readonly string[]; onChoose: (reasons: string[]) => void };

/** What is looked at in this view; what is wrong with it, by number. */
export function ReasonKeys({ ref, offered, chosen, onChoose }: Props) {
  const turn = (reason: string) => onChoose(chosen.includes(reason) ? chosen.filter((r) => r !== reason) : [...chosen, reason]);
  useNumberKeys((n) => offered[n - 1] !== undefined && turn(offered[n - 1]!));
  return (
    <fieldset ref={ref} className="reason-keys">
      <legend className="label">{t('Why a retake? More than one may be chosen.')}</legend>
      {offered.map((reason, i) => (
        <button key={reason} type="button" aria-pressed={chosen.includes(reason)} onClick={() => turn(reason)}>
          {i < 9 && <kbd aria-hidden="true">{i + 1}</kbd>} <span>{reason}</span>
        </button>
      ))}
    </fieldset>
  );
}

function useNumberKeys(act: (n: number) => void) {
  const latest = useRef(act);
  useEffect(() => {
    latest.current = act;
  });
  useEffect(() => {
    const pressed = (e: KeyboardEvent) => {
      const busy = e.target instanceof HTMLElement && e.target.closest('input:not([type=range]), textarea, select, [role=radiogroup], [role=listbox]');
      if (busy || e.defaultPrevented || e.ctrlKey || e.metaKey || e.altKey || e.repeat || !/^[1-9]$/.test(e.key)) return;
      e.preventDefault();
      latest.current(Number(e.key));
    };
    window.addEventListener('keydown', pressed);
    return () => window.removeEventListener('keydown', pressed);
  }, []);
}
