/** A value and its unit stay on one line; a missing value says why, at the size of a value. */
export function Value({ value, unit, reason }: { value: string | number | null | undefined; unit?: string; reason?: string }) {
  if (value === null || value === undefined || value === '') return <span>{reason ?? 'not recorded'}</span>;
  return (
    <span className="val">
      {value}
      {unit && ` ${unit}`}
    </span>
  );
}
