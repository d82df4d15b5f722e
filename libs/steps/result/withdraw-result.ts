import { useCase } from '../record/use-case.js';

/** The certificate's page says so from this moment on; a correction to everybody who got the letter becomes due. */
export const withdrawResult = useCase('withdrawResult', async ({ tx, order }, on, input) => {
  await tx.document.updateMany({ where: { orderId: order.id, kind: 'certificate', subject: on, state: 'valid' }, data: { state: 'withdrawn' } });
  return [{ type: 'resultWithdrawn', study: on, result: input.result, why: input.reason }];
});
