import { useMutation } from '@tanstack/react-query';
import { useNavigate, useParams } from '@tanstack/react-router';
import { useState } from 'react';
import type { Me } from '#libs/contracts/session';
import { post } from '../../api/client.js';
import { useBecome } from '../../api/session.js';
import { Button } from '../../design/Button.js';
import { ErrorBar } from '../../design/Notice.js';
import { Sheet } from '../../design/Sheet.js';
import { TextField } from '../../design/TextField.js';
import { Brand } from '../../shell/Brand.js';
import { t } from '../../words/t.js';

/** A reader's first visit: the centre's mail led here, and the reader chooses a password nobody else knows. */
export function JoinScreen() {
  const { token } = useParams({ from: '/join/$token' });
  const [password, setPassword] = useState<string | undefined>();
  const become = useBecome();
  const navigate = useNavigate();
  const join = useMutation({
    mutationFn: (chosen: string) => post<Me>('/join', { token, password: chosen }),
    onSuccess: (me) => {
      become(me);
      void navigate({ to: '/reader', replace: true });
    },
  });
  return (
    <>
      <header>
        <div className="strip">
          <Brand house={t('for readers')} />
        </div>
      </header>
      <main id="main" className="bare">
        <Sheet title={t('Choose a password')}>
          <form className="stack" noValidate onSubmit={(e) => (e.preventDefault(), join.mutate(password ?? ''))}>
            <TextField label={t('Password, at least 10 signs')} type="password" value={password} onChange={setPassword} />
            <ErrorBar error={join.error} />
            <Button kind="ink" type="submit">{t('Choose and sign in')}</Button>
          </form>
        </Sheet>
      </main>
    </>
  );
}
