import { useId, type ReactNode } from 'react';

/** One question a sheet, with a rule above its heading. */
export function Sheet({ title, beside, children, className }: { title: string; beside?: ReactNode; children: ReactNode; className?: string }) {
  const id = useId();
  return (
    <section className={`sheet ${className ?? ''}`} aria-labelledby={id}>
      <h2 id={id}>
        {title}
        {beside && <span className="beside"> {beside}</span>}
      </h2>
      {children}
    </section>
  );
}
