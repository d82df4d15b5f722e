import type { SchemeScreen } from '#libs/contracts/screens/board';
import { Empty } from '../../design/Empty.js';
import { Sheet } from '../../design/Sheet.js';
import { list, plural } from '../../design/format.js';
import { flows } from './study-steps.js';

export function StepsSheet({ screen }: { screen: SchemeScreen }) {
  const each = flows(screen.steps);
  return (
    <Sheet title="Where the studies stand">
      {each.length === 0 && <Empty title="No study yet">As soon as a practice books the first dog, its studies are counted here.</Empty>}
      {each.map((flow) => (
        <div key={flow.protocol} className="flow">
          <h3>{flow.protocol}</h3>
          <ol>
            {flow.along.map((at) => (
              <li key={at.step}>
                <b className="num">{at.count}</b> <span>{at.words}</span>
              </li>
            ))}
          </ol>
          {flow.beside.length > 0 && <p className="small">Beside the road: {list(flow.beside.map((s) => `${s.count} ${s.words}`))}.</p>}
        </div>
      ))}
      <p className="not-sent">
        {screen.imagedNotSent === 0 ? (
          'Every study that was imaged has been sent.'
        ) : (
          <>
            <b>{plural(screen.imagedNotSent, 'study was', 'studies were')} imaged and not sent.</b> Where films stay at home, the breed looks tighter than it is.
          </>
        )}
      </p>
    </Sheet>
  );
}
