import type { ReactNode } from 'react';
import { sentence } from './format.js';

/** What is missing; who can supply it and how; by when; and the way out. */
export function Hold({ title, rest, who, children }: { title: string; rest: string; who?: string; children?: ReactNode }) {
  return (
    <li>
      <span>
        <b>{sentence(title)}</b> {rest}
      </span>
      {who && <span className="who">{who}</span>}
      {children && <span className="act">{children}</span>}
    </li>
  );
}

export const HoldList = ({ children }: { children: ReactNode }) => <ul className="holds">{children}</ul>;
