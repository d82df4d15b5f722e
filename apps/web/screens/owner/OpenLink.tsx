import { useMutation } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import type { ScreenSentence } from '#libs/words/de/screen';
import type { Me } from '#libs/contracts/session';
import { post } from '../../api/client.js';
import { ApiFailure, isFailure } from '../../api/failure.js';
import { useBecome } from '../../api/session.js';
import { Button } from '../../design/Button.js';
import { ErrorBar } from '../../design/Notice.js';
import { Speak, useWords } from '../../words/Speak.js';
import { browserLanguage } from '../../words/t.js';
import { House } from './House.js';
import './owner.css';

const words = {
  owner: { title: 'Your dog’s page', says: 'Here you see how far your dog’s examination is, answer questions and give or take back your yes.', button: 'Open my dog’s page', to: '/owner' },
  reader: { title: 'Pictures to read', says: 'Here you look at the pictures of one package and enter your reading. You read blind: no owner, no practice.', button: 'Open the package', to: '/reader' },
} as const satisfies Record<string, Record<'title' | 'says' | 'button', ScreenSentence> & { to: string }>;

const notWhole = { code: 'LINK_NOT_VALID' as const, message: 'This link is not whole. Press it in the mail once more, or copy all of it. If that does not help, ask the practice for a new one.' };
/** Too short to be a link of this server at all. */
const cutOff = (error: unknown) => isFailure(error) && error.code === 'BAD_INPUT';

/** A link is opened by a press, so that a mail program that looks at every link opens nothing. */
export function OpenLink(link: { token: string; of: keyof typeof words }) {
  return (
    <Speak language={browserLanguage()}>
      <Opening {...link} />
    </Speak>
  );
}

function Opening({ token, of }: { token: string; of: keyof typeof words }) {
  const t = useWords();
  const become = useBecome();
  const navigate = useNavigate();
  const open = useMutation({
    mutationFn: () => post<Me>('/links/open', { token }),
    onSuccess: (me) => {
      become(me);
      void navigate({ to: words[of].to, replace: true });
    },
  });
  const { title, says, button } = words[of];
  return (
    <div className="own">
      <header>
        <House name="Cotyla" />
      </header>
      <main id="main">
        <h1>{t(title)}</h1>
        <p className="lead">{t(says)}</p>
        <ErrorBar error={cutOff(open.error) ? new ApiFailure(401, notWhole) : open.error} />
        <Button kind="ink" onPress={() => open.mutate()}>
          {t(button)}
        </Button>
        <p className="quiet after-button">{t('The link is yours alone. Please do not pass it on; whoever has it can answer in your name.')}</p>
      </main>
    </div>
  );
}
