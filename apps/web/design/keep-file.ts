/** Into the folder where the browser puts what was fetched. */
export function keepFile(content: Blob, name: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(content);
  link.download = name;
  link.click();
  // The browser reads it after the click; a minute is long enough to have begun.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
