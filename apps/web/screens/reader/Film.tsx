import { Button } from '../../design/Button.js';
import type { PackageScreen } from '#libs/contracts/screens/reader';
import { FilmBox } from '../../film/FilmBox.js';
import { ToneTools } from '../../film/ToneTools.js';
import { useFilm } from '../../film/use-film.js';
import { useLook } from '../../film/use-look.js';
import { t } from '../../words/t.js';
import { HERE, Told } from '../../words/Told.js';

type Image = PackageScreen['images'][number];
type Props = { image: Image; base: string; label: string };

export function Film(props: Props) {
  const { image, base, label } = props;
  if (image.previewable) return <ShownFilm {...props} />;
  return (
    <div className="film-none">
      <p>
        <Told
          text={t('**{label} cannot be shown on this page.** The file itself is whole. {fetch} and open it in your own program.', { label, fetch: HERE })}
          here={
            <a href={`${base}/images/${image.image}/file`} download>
              {t('Fetch the file')}
            </a>
          }
        />
      </p>
    </div>
  );
}

function ShownFilm({ image, base, label }: Props) {
  const at = `${base}/images/${image.image}`;
  const film = useFilm(`${at}/pixels`);
  const look = useLook(film.film ?? { width: 1, height: 1 });
  return (
    <>
      <FilmBox film={film} look={look} label={label} preview={`${at}/preview`} />
      <div className="film-tools" role="group" aria-label={t('How the picture is shown')}>
        <Button onPress={() => look.zoom(1.25)}>{t('Nearer')}</Button>
        <Button onPress={() => look.zoom(0.8)}>{t('Further')}</Button>
        <ToneTools look={look} />
        <Button onPress={look.turn} aria-pressed={look.tone.turned}>
          {t('Black for white')}
        </Button>
        <Button onPress={look.asItCame}>{t('As it came')}</Button>
      </div>
    </>
  );
}
