export { StepError, badInput, notFound } from '#libs/register/refusal';
