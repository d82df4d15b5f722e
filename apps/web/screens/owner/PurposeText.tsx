import type { AskedPurpose } from './consent-purposes.js';
import { cannotBeUndone } from './undone.js';

/** The words that are agreed to, in full, with their version: nothing is signed that was not shown. */
export function PurposeText({ asked }: { asked: AskedPurpose }) {
  return (
    <>
      {asked.text.split(/\n{2,}/).map((paragraph) => (
        <p key={paragraph} className="written">{paragraph}</p>
      ))}
      <p className="why">{cannotBeUndone[asked.purpose]}</p>
      <p className="quiet small">Version of this text: {asked.version}</p>
    </>
  );
}
