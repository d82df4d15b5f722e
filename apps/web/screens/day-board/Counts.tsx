import type { DayBoard } from '#libs/contracts/screens/board';
import { Button } from '../../design/Button.js';
import { plural } from '../../design/format.js';

export type Only = 'all' | 'waiting' | 'mine';

/** The day in one sentence; the two last parts show only those rows. */
export function Counts({ counts: c, only, onOnly }: { counts: DayBoard['counts']; only: Only; onOnly: (only: Only) => void }) {
  const parts = [c.home > 0 && `${c.home} gone home`, c.here > 0 && `${c.here} here`, c.toCome > 0 && `${c.toCome} to come`, c.ended > 0 && `${c.ended} cancelled or missed`].filter(Boolean);
  const toggle = (wanted: Only) => onOnly(only === wanted ? 'all' : wanted);
  return (
    <p>
      {plural(c.visits, 'visit', 'visits')}
      {parts.length > 0 && `: ${parts.join(', ')}`}.{' '}
      {c.waiting > 0 && (
        <Button kind="text" aria-pressed={only === 'waiting'} onPress={() => toggle('waiting')}>
          <b>{c.waiting === 1 ? '1 waits' : `${c.waiting} wait`} for somebody</b>
        </Button>
      )}
      {c.forMe > 0 && (
        <>
          ,{' '}
          <Button kind="text" aria-pressed={only === 'mine'} onPress={() => toggle('mine')}>
            <b>{c.forMe} for you</b>
          </Button>
        </>
      )}
      {only !== 'all' && (
        <>
          {'. '}
          <Button kind="text" onPress={() => onOnly('all')}>
            Show all visits
          </Button>
        </>
      )}
    </p>
  );
}
