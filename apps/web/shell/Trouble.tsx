import type { ErrorComponentProps } from '@tanstack/react-router';
import { Link } from '@tanstack/react-router';
import { ErrorBar } from '../design/Notice.js';

export const Trouble = ({ error }: ErrorComponentProps) => (
  <main className="bare">
    <h1 className="vh">Trouble</h1>
    <ErrorBar error={error} />
  </main>
);

export const NoSuchPage = () => (
  <main className="bare stack">
    <h1>There is no page here</h1>
    <p>The address may have been cut off. Links in mails must be copied whole.</p>
    <p>
      <Link to="/" className="btn">
        Go to today
      </Link>
    </p>
  </main>
);
