import type { ReactNode } from 'react';
import { Button as AriaButton, type ButtonProps } from 'react-aria-components';

type Props = Omit<ButtonProps, 'className' | 'isDisabled' | 'children'> & {
  /** elder: the one act that lifts the first hold. ink: the usual act. The rest is plain. A button never greys out. */
  kind?: 'plain' | 'ink' | 'elder' | 'text';
  size?: 'desk' | 'tablet';
  shortcut?: string;
  children: ReactNode;
};

export const buttonClass = (kind: Props['kind'] = 'plain', size: Props['size'] = 'desk') =>
  ['btn', kind !== 'plain' && `btn-${kind}`, size === 'tablet' && 'btn-tablet'].filter(Boolean).join(' ');

export function Button({ kind, size, shortcut, children, ...rest }: Props) {
  return (
    <AriaButton {...rest} className={buttonClass(kind, size)}>
      {children}
      {shortcut && <kbd aria-hidden="true">{shortcut}</kbd>}
    </AriaButton>
  );
}
