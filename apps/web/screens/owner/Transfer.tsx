import type { OwnerPage } from '#libs/contracts/screens/owner';
import { Button } from '../../design/Button.js';
import { fullDay } from '../../design/format.js';
import { ErrorBar } from '../../design/Notice.js';
import { useWords } from '../../words/Speak.js';
import { Told } from '../../words/Told.js';
import { useTellTransfer } from './queries.js';

/** The dog changed hands: what is shared, what is not, and this side's yes. */
export function Transfer({ page }: { page: OwnerPage }) {
  const t = useWords();
  const tell = useTellTransfer();
  const { transfer, dog } = page;
  if (!transfer || transfer.agreed) return null;
  const about = { dog: dog.name, day: fullDay(transfer.day, t.language) };
  const seller = transfer.party === 'seller';
  return (
    <section aria-labelledby="sold">
      <h2 id="sold">{t('{dog} has a new owner', { dog: dog.name })}</h2>
      <p>
        {seller
          ? t('The practice has written down that {dog} has a new owner since {day}. May they see what comes of the pictures? They see nothing of you: not your name, your answers or what you signed.', about)
          : t('You are {dog}’s owner since {day}. If you and the earlier owner both agree, what comes of the pictures is shown here. Nothing from before that day is.', about)}
      </p>
      {transfer.said ? (
        <p>
          <Told text={t('**You have said yes.** We wait for the other side. You need do nothing more.')} />
        </p>
      ) : (
        <>
          <ErrorBar error={tell.error} />
          <Button kind="ink" onPress={() => tell.mutate({})}>
            {t(tell.isPending ? 'Sending …' : seller ? 'Yes, they may see it' : 'Yes, I want to see it')}
          </Button>
          <p className="quiet small">{t('Not saying yes is an answer too. Phone the practice if anything here is not right.')}</p>
        </>
      )}
    </section>
  );
}
