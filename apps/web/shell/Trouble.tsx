import type { ErrorComponentProps } from '@tanstack/react-router';
import { Link } from '@tanstack/react-router';
import { Empty } from '../design/Empty.js';
import { ErrorBar } from '../design/Notice.js';

export const Trouble = ({ error }: ErrorComponentProps) => (
  <div className="bare">
    <ErrorBar error={error} />
  </div>
);

export const NoSuchPage = () => (
  <div className="bare">
    <Empty title="There is no page here" actions={<Link to="/" className="btn">Go to today</Link>}>
      The address may have been cut off. Links in mails must be copied whole.
    </Empty>
  </div>
);
