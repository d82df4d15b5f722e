import { buttonClass } from '../../design/Button.js';
import { Sheet } from '../../design/Sheet.js';

export function Scan({ order, sha, words }: { order: string; sha: string; words: string }) {
  return (
    <Sheet title="The sheet that came" className="conflict-scan">
      <img src={`/api/orders/${order}/images/${sha}/preview`} alt={`Scan of the posted sheet, keyed as ${words}`} />
      <p>
        <a className={buttonClass()} href={`/api/orders/${order}/images/${sha}/file`} target="_blank" rel="noreferrer">
          Open larger
        </a>
      </p>
    </Sheet>
  );
}
