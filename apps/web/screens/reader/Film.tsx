import { useState } from 'react';
import { Button } from '../../design/Button.js';
import type { PackageScreen } from '#libs/contracts/screens/reader';
import { useFilmGestures } from './use-film-gestures.js';

type Image = PackageScreen['images'][number];
const plain = { brightness: 100, contrast: 100, turned: false };

export function Film({ image, base, label }: { image: Image; base: string; label: string }) {
  const { view, zoom, fit, box, handlers } = useFilmGestures();
  const [tone, setTone] = useState(plain);
  const file = `${base}/images/${image.image}/file`;
  if (!image.previewable)
    return (
      <div className="film-none">
        <p>
          <b>{label} cannot be shown on this page.</b> The file itself is whole.{' '}
          <a href={file} download>
            Fetch the file
          </a>{' '}
          and open it in your own program.
        </p>
      </div>
    );
  return (
    <>
      <div ref={box} className="film-box" tabIndex={0} role="group" aria-label={`${label}. Plus and minus bring it nearer or further, arrows move it, 0 shows all of it.`} {...handlers}>
        <img
          src={`${base}/images/${image.image}/preview`}
          alt={label}
          draggable={false}
          style={{ transform: `translate(${view.x}px, ${view.y}px) scale(${view.scale})`, filter: `brightness(${tone.brightness}%) contrast(${tone.contrast}%)${tone.turned ? ' invert(1)' : ''}` }}
        />
      </div>
      <div className="film-tools" role="group" aria-label="How the picture is shown">
        <Button onPress={() => zoom(1.25)}>Nearer</Button>
        <Button onPress={() => zoom(0.8)}>Further</Button>
        <label>
          Brightness <input type="range" min={20} max={300} step={5} value={tone.brightness} onChange={(e) => setTone({ ...tone, brightness: e.target.valueAsNumber })} />
        </label>
        <label>
          Contrast <input type="range" min={20} max={400} step={5} value={tone.contrast} onChange={(e) => setTone({ ...tone, contrast: e.target.valueAsNumber })} />
        </label>
        <Button onPress={() => setTone({ ...tone, turned: !tone.turned })} aria-pressed={tone.turned}>
          Black for white
        </Button>
        <Button onPress={() => (fit(), setTone(plain))}>As it came</Button>
      </div>
    </>
  );
}
