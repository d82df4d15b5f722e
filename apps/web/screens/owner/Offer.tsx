import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type { OwnerPage } from '#libs/contracts/screens/owner';
import type { OwnerOffer } from '#libs/contracts/waiting';
import { get, post } from '../../api/client.js';
import { Button } from '../../design/Button.js';
import { ErrorBar, Notice } from '../../design/Notice.js';
import { longDay, momentAt } from '../../design/format.js';
import { useWords } from '../../words/Speak.js';
import { Told } from '../../words/Told.js';

const key = ['owner', 'offer'];

/** A time that has become free, with a yes and a no of the same weight. */
export function Offer({ page }: { page: OwnerPage }) {
  const t = useWords();
  const queries = useQueryClient();
  const { data } = useQuery({ queryKey: key, queryFn: () => get<OwnerOffer>('/owner/offer') });
  const tell = useMutation({ mutationFn: (body: { offer: string; answer: 'yes' | 'no' }) => post<OwnerOffer>('/owner/offer', body), onSettled: () => queries.invalidateQueries({ queryKey: ['owner'] }) });
  const offer = data?.offer;
  if (!offer) return tell.isSuccess ? <Notice>{t(tell.variables.answer === 'yes' ? 'The visit has been moved. A confirmation is on its way.' : 'Your visit stays as it is.')}</Notice> : <ErrorBar error={tell.error} />;
  const when = { day: longDay(offer.day, t.language), start: offer.start, until: momentAt(offer.expiresAt, page.practice.zone, t.language) };
  return (
    <section aria-labelledby="offer">
      <h2 id="offer">{t('An earlier time for {dog}?', { dog: page.dog.name })}</h2>
      <p>
        <Told
          text={
            offer.insteadOf
              ? t('**{day} at {start}**, instead of {now} at {nowStart}. Please answer until {until}; after that it goes to somebody else, and your visit stays as it is.', { ...when, now: longDay(offer.insteadOf.day, t.language), nowStart: offer.insteadOf.start })
              : t('**{day} at {start}**. Please answer until {until}; after that it goes to somebody else, and your visit stays as it is.', when)
          }
        />
      </p>
      <ErrorBar error={tell.error} />
      <div className="acts">
        <Button size="tablet" onPress={() => tell.mutate({ offer: offer.id, answer: 'yes' })}>
          {t('Yes, move the visit')}
        </Button>
        <Button size="tablet" onPress={() => tell.mutate({ offer: offer.id, answer: 'no' })}>
          {t('No, keep it as it is')}
        </Button>
      </div>
    </section>
  );
}
