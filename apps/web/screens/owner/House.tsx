/** Whose house it is, beside the piece of thread that is the mark of the program. */
export const House = ({ name }: { name: string }) => (
  <span className="house">
    <svg viewBox="0 0 34 14" aria-hidden="true">
      <path d="M0 7H11M23 7H34" stroke="currentColor" strokeWidth="3" />
      <circle cx="17" cy="7" r="5" fill="none" stroke="currentColor" strokeWidth="3" />
    </svg>
    {name}
  </span>
);
