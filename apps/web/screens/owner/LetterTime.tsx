import type { OwnerPage } from '#libs/contracts/screens/owner';
import { ErrorBar } from '../../design/Notice.js';
import { RadioChoice } from '../../design/RadioChoice.js';
import { useTellLetterTime } from './queries.js';

/** When a letter may come: while somebody can be asked about it, unless the owner would rather have it at once. */
export function LetterTime({ page }: { page: OwnerPage }) {
  const tell = useTellLetterTime();
  const { letters, practice } = page;
  if (letters.reachable === 'at any time') return null;
  const value = letters.anyTime ? 'any' : 'reachable';
  return (
    <section aria-labelledby="letters">
      <h2 id="letters">When letters come</h2>
      <RadioChoice
        label={`Letters about pictures come ${letters.reachable}, so that you reach somebody of ${practice.name} with your questions.`}
        options={[
          { id: 'reachable', name: 'That is good' },
          { id: 'any', name: 'Send them at once, at any time' },
        ]}
        value={value}
        onChange={(wish) => wish && wish !== value && tell.mutate({ anyTime: wish === 'any' })}
      />
      <ErrorBar error={tell.error} />
    </section>
  );
}
