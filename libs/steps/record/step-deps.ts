export type { StepDeps } from '#libs/register/deps';
