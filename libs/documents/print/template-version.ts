/** An older snapshot printed by a newer template would not be the paper that was sent. */
export function requireTemplate(paper: string, snapshot: { templateVersion: number }, version: number): void {
  if (snapshot.templateVersion !== version) {
    throw new Error(
      `This ${paper} was made for template ${snapshot.templateVersion}; this program prints template ${version}. Use the stored file, or make a new snapshot.`,
    );
  }
}
