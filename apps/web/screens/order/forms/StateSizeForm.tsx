import { visitActions } from '#libs/contracts/actions/visit';
import { Select } from '../../../design/Select.js';
import { timeAt } from '../../../design/format.js';
import { useEntry } from '../../../entry/use-entry.js';
import { t } from '../../../words/t.js';
import { FilmSize } from '../record/FilmSize.js';
import { maySaySize } from '../record/picture-film.js';
import { ActionEntryForm } from './ActionEntryForm.js';
import type { FormProps } from './form-props.js';
import { PixelSizeFields } from './PixelSizeFields.js';

/** Said later of a picture that is here already, or taken back. */
export function StateSizeForm(props: FormProps) {
  const { screen, next } = props;
  const films = screen.exposures.filter((e) => e.visit === next.on.id && maySaySize(e));
  const entry = useEntry(visitActions.stateSize, { ...(films.length === 1 && { exposure: films[0]!.id }), ...props.start });
  const film = films.find((e) => e.id === entry.values.exposure);
  return (
    <ActionEntryForm entry={entry} props={props}>
      <Select
        label={t('Film')}
        options={films.map((e) => ({ id: e.id, name: t('{view}, attempt {attempt}', { view: e.viewName, attempt: e.attempt }), hint: timeAt(e.at, screen.practice.zone) }))}
        {...entry.field('exposure')}
        onChange={(exposure) => {
          entry.set('exposure', exposure);
          entry.set('size', undefined);
        }}
      />
      {film && (
        <>
          <FilmSize film={film} />
          <PixelSizeFields screen={screen} view={film.view} value={entry.values.size} onChange={(size) => entry.set('size', size)} error={entry.error} />
        </>
      )}
    </ActionEntryForm>
  );
}
