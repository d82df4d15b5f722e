import type { DayBoard } from '#libs/contracts/screens/board';
import { Button } from '../../design/Button.js';
import { t } from '../../words/t.js';

export type Only = 'all' | 'waiting' | 'mine';

/** The day in one sentence; the two last parts show only those rows. */
export function Counts({ counts: c, only, onOnly }: { counts: DayBoard['counts']; only: Only; onOnly: (only: Only) => void }) {
  const parts = [c.home > 0 && t('{count} gone home', { count: c.home }), c.here > 0 && t('{count} here', { count: c.here }), c.toCome > 0 && t('{count} to come', { count: c.toCome }), c.ended > 0 && t('{count} cancelled or missed', { count: c.ended })].filter(Boolean);
  const toggle = (wanted: Only) => onOnly(only === wanted ? 'all' : wanted);
  return (
    <p>
      {t('{visits, plural, one {# visit} other {# visits}}', { visits: c.visits })}
      {parts.length > 0 && `: ${parts.join(', ')}`}.{' '}
      {c.waiting > 0 && (
        <Button kind="text" aria-pressed={only === 'waiting'} onPress={() => toggle('waiting')}>
          <b>{t('{count, plural, one {# waits} other {# wait}} for somebody', { count: c.waiting })}</b>
        </Button>
      )}
      {c.forMe > 0 && (
        <>
          ,{' '}
          <Button kind="text" aria-pressed={only === 'mine'} onPress={() => toggle('mine')}>
            <b>{t('{count} for you', { count: c.forMe })}</b>
          </Button>
        </>
      )}
      {only !== 'all' && (
        <>
          {'. '}
          <Button kind="text" onPress={() => onOnly('all')}>
            {t('Show all visits')}
          </Button>
        </>
      )}
    </p>
  );
}
