import type { StandingView } from '#libs/contracts/standing';
import { LineOfTwenty } from './LineOfTwenty.js';

/** Where a dog stands among its breed, or why it is set beside no others; the same words as in its letter. */
export function Standing({ standing }: { standing: StandingView }) {
  return (
    <div className="standing">
      <p>{standing.lead.split('**').map((part, i) => (i % 2 === 1 ? <b key={i}>{part}</b> : part))}</p>
      {standing.line && <LineOfTwenty line={standing.line} />}
      {standing.small.map((words) => <p key={words} className="quiet small">{words}</p>)}
    </div>
  );
}
