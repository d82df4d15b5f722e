import { useCase } from '../record/use-case.js';

/** A person says what became of a sending whose outcome nobody knows: never two without that, never none unnoticed. */
export const resolveSend = useCase('resolveSend', (_work, on, input) => [{ type: 'sendResolved', study: on, send: input.send, arrived: input.arrived }]);
