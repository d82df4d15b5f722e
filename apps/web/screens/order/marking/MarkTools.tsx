import { memo } from 'react';
import type { Point } from '#libs/science/measurement/plane';
import { Button } from '../../../design/Button.js';
import { t } from '../../../words/t.js';
import type { Change } from './marks-draft.js';

type Props = { change: (change: Change) => void; zoom: (by: number) => void; whole: () => void; middle: () => Point };

/** Not drawn anew while a point follows a finger. */
export const MarkTools = memo(function MarkTools({ change, zoom, whole, middle }: Props) {
  return (
    <div className="mark-tools" role="group" aria-label={t('Points and picture')}>
      <Button onPress={() => change({ do: 'add', at: middle() })}>{t('Set a point in the middle')}</Button>
      <Button onPress={() => change({ do: 'undo' })} shortcut="Z">
        {t('Undo')}
      </Button>
      <Button onPress={() => change({ do: 'remove' })}>{t('Remove a point')}</Button>
      <Button onPress={() => change({ do: 'reset' })}>{t('Remove all')}</Button>
      <Button onPress={() => zoom(1.5)} shortcut="+">
        {t('Nearer')}
      </Button>
      <Button onPress={() => zoom(1 / 1.5)} shortcut="−">
        {t('Further')}
      </Button>
      <Button onPress={whole} shortcut="0">
        {t('Whole picture')}
      </Button>
    </div>
  );
});
