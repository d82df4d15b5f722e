import type { OwnerPage } from '#libs/contracts/screens/owner';
import { Button } from '../../design/Button.js';
import { fullDay } from '../../design/format.js';
import { ErrorBar } from '../../design/Notice.js';
import { useTellTransfer } from './queries.js';

/** The dog changed hands: what is shared, what is not, and this side's yes. */
export function Transfer({ page }: { page: OwnerPage }) {
  const tell = useTellTransfer();
  const { transfer, dog } = page;
  if (!transfer || transfer.agreed) return null;
  const seller = transfer.party === 'seller';
  return (
    <section aria-labelledby="sold">
      <h2 id="sold">{dog.name} has a new owner</h2>
      <p>
        {seller
          ? `The practice has written down that ${dog.name} has a new owner since ${fullDay(transfer.day)}. May they see what comes of the pictures? They see nothing of you: not your name, your answers or what you signed.`
          : `You are ${dog.name}’s owner since ${fullDay(transfer.day)}. If you and the earlier owner both agree, what comes of the pictures is shown here. Nothing from before that day is.`}
      </p>
      {transfer.said ? (
        <p>
          <b>You have said yes.</b> We wait for the other side. You need do nothing more.
        </p>
      ) : (
        <>
          <ErrorBar error={tell.error} />
          <Button kind="ink" onPress={() => tell.mutate({})}>
            {tell.isPending ? 'Sending …' : seller ? 'Yes, they may see it' : 'Yes, I want to see it'}
          </Button>
          <p className="quiet small">Not saying yes is an answer too. Phone the practice if anything here is not right.</p>
        </>
      )}
    </section>
  );
}
