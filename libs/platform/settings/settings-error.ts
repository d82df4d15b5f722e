export interface SettingsProblem {
  variable: string;
  /** One sentence for the person who installs: what is wrong and what a right value looks like. Never holds a secret. */
  sentence: string;
}

export class SettingsError extends Error {
  readonly problems: readonly SettingsProblem[];

  constructor(problems: readonly SettingsProblem[]) {
    super(problems.map((p) => `${p.variable}: ${p.sentence}`).join('\n'));
    this.name = 'SettingsError';
    this.problems = problems;
  }
}
