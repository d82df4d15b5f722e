import { NARROWEST, WIDEST } from './tone.js';
import type { Look } from './use-look.js';
import { t } from '../words/t.js';

/** Window and level by slider; both start from the window that the film came with. */
export function ToneTools({ look: { tone, setTone } }: { look: Look }) {
  return (
    <>
      <label>
        {t('Level')}{' '}<input type="range" min={-1} max={1} step={0.01} value={tone.level} aria-valuetext={t('{level} of 100 brighter', { level: Math.round(tone.level * 100) })} onChange={(e) => setTone({ ...tone, level: e.target.valueAsNumber })} />
      </label>
      <label>
        {t('Window')}{' '}<input type="range" min={Math.log(NARROWEST)} max={Math.log(WIDEST)} step={0.01} value={Math.log(tone.width)} aria-valuetext={t('{width}% of its own width', { width: Math.round(tone.width * 100) })} onChange={(e) => setTone({ ...tone, width: Math.exp(e.target.valueAsNumber) })} />
      </label>
    </>
  );
}
