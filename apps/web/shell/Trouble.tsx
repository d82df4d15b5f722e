import type { ErrorComponentProps } from '@tanstack/react-router';
import { Link } from '@tanstack/react-router';
import { Empty } from '../design/Empty.js';
import { ErrorBar } from '../design/Notice.js';

export const Trouble = ({ error }: ErrorComponentProps) => (
  <main className="bare">
    <h1 className="vh">Trouble</h1>
    <ErrorBar error={error} />
  </main>
);

export const NoSuchPage = () => (
  <main className="bare">
    <h1>There is no page here</h1>
    <Empty title="Look at the address once more" actions={<Link to="/" className="btn">Go to today</Link>}>
      The address may have been cut off. Links in mails must be copied whole.
    </Empty>
  </main>
);
