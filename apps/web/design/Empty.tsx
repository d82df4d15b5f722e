import type { ReactNode } from 'react';
import { t } from '../words/t.js';

/** What is not here, why, and what to do. */
export function Empty({ title, children, actions }: { title: string; children?: ReactNode; actions?: ReactNode }) {
  return (
    <div className="empty">
      <h3>{title}</h3>
      {children && <p>{children}</p>}
      {actions && <div className="acts">{actions}</div>}
    </div>
  );
}

export const Loading = ({ what }: { what: string }) => (
  <p className="loading quiet" role="status">
    {t('Fetching {what} …', { what })}
  </p>
);
