import { useEffect, useRef, useState } from 'react';
import SignaturePad from 'signature_pad';
import { Button } from './Button.js';
import { signatureSvg } from './signature-svg.js';
import { useSay } from './speech.js';
import { TextField } from './TextField.js';

export type Signature = { signatureSvg?: string; typedName?: string };

/** Drawn or typed: not everybody can draw a line, so the typed name counts as much. */
export function SignatureField({ value, onChange, error }: { value: Signature; onChange: (value: Signature) => void; error?: string }) {
  const say = useSay();
  const canvas = useRef<HTMLCanvasElement>(null);
  const pad = useRef<SignaturePad>(null);
  const latest = useRef({ value, onChange });
  const [drawn, setDrawn] = useState(false);
  useEffect(() => {
    latest.current = { value, onChange };
  });

  useEffect(() => {
    const element = canvas.current;
    if (!element) return;
    const scale = Math.max(window.devicePixelRatio, 1);
    element.width = element.offsetWidth * scale;
    element.height = element.offsetHeight * scale;
    element.getContext('2d')?.scale(scale, scale);
    const made = new SignaturePad(element, { penColor: '#1b2230', minWidth: 1, maxWidth: 2.5 });
    made.addEventListener('endStroke', () => {
      setDrawn(true);
      latest.current.onChange({ ...latest.current.value, signatureSvg: signatureSvg(made.toData().map((stroke) => stroke.points), element.offsetWidth, element.offsetHeight) });
    });
    pad.current = made;
    return () => made.off();
  }, []);

  return (
    <fieldset className="signature" data-invalid={error ? '' : undefined}>
      <legend className="label">{say('Signature: draw it, or write the name')}</legend>
      <canvas ref={canvas} role="img" aria-label={say(drawn ? 'A signature has been drawn' : 'Field to draw a signature in; the name may be written below instead')} />
      <div className="acts">
        <Button
          onPress={() => {
            pad.current?.clear();
            setDrawn(false);
            onChange({ typedName: value.typedName });
          }}
        >
          {say('Draw again')}
        </Button>
      </div>
      <TextField label={say('Name of the person who signs')} value={value.typedName} onChange={(typedName) => onChange({ ...value, typedName })} error={error} autoComplete="off" />
    </fieldset>
  );
}
