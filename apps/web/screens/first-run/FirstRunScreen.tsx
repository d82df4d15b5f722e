import { useMutation } from '@tanstack/react-query';
import { Navigate, useNavigate } from '@tanstack/react-router';
import { useRef, useState } from 'react';
import { firstRun, type FirstRun, type Me } from '#libs/contracts/session';
import { post } from '../../api/client.js';
import { isFailure } from '../../api/failure.js';
import { useBecome, useFirstRunNeeded } from '../../api/session.js';
import { Button } from '../../design/Button.js';
import { ErrorBar } from '../../design/Notice.js';
import { Sheet } from '../../design/Sheet.js';
import { TextField } from '../../design/TextField.js';
import { SuggestBox } from '../../design/ComboBox.js';
import { plainIssue } from '../../entry/plain-issue.js';
import { Brand } from '../../shell/Brand.js';
import { t } from '../../words/t.js';
import './first-run.css';
import { problemsByPath } from './problems-by-path.js';

type Path = `scheme.${keyof FirstRun['scheme']}` | `practice.${keyof FirstRun['practice']}` | `manager.${keyof FirstRun['manager']}`;
const here = Intl.DateTimeFormat().resolvedOptions().timeZone;

export function FirstRunScreen() {
  const { data: needed } = useFirstRunNeeded();
  const become = useBecome();
  const navigate = useNavigate();
  const form = useRef<HTMLFormElement>(null);
  const [written, setWritten] = useState<Partial<Record<Path, string>>>({ 'scheme.zone': here });
  const [problems, setProblems] = useState<Record<string, string>>({});
  const create = useMutation({
    mutationFn: (body: FirstRun) => post<Me>('/first-run', body),
    onSuccess: (me) => {
      become(me);
      void navigate({ to: '/practice', replace: true });
    },
    onError: (error) => isFailure(error) && setProblems(problemsByPath(error.body.fields ?? [])),
  });
  if (needed && !needed.needed && !create.isPending && !create.isSuccess) return <Navigate to="/sign-in" replace />;

  const submit = () => {
    const part = (of: string) => Object.fromEntries(Object.entries(written).flatMap(([path, value]) => (path.startsWith(`${of}.`) ? [[path.slice(of.length + 1), value]] : [])));
    const read = firstRun.safeParse({ scheme: part('scheme'), practice: part('practice'), manager: part('manager') }, { error: plainIssue });
    setProblems(read.success ? {} : problemsByPath(read.error.issues.map((i) => ({ path: i.path.join('.'), message: i.message }))));
    if (read.success) create.mutate(read.data);
    else requestAnimationFrame(() => form.current?.querySelector<HTMLElement>('[data-invalid] input')?.focus());
  };
  const field = (path: Path) => ({ value: written[path], onChange: (value: string | undefined) => setWritten((was) => ({ ...was, [path]: value })), ...(problems[path] ? { error: problems[path] } : {}) });

  return (
    <>
      <header>
        <div className="strip">
          <Brand house={t('first start')} />
        </div>
      </header>
      <main id="main" className="bare stack first-run">
        <div className="head">
          <h1>{t('Set up this server')}</h1>
          <p>{t('It is empty. Three things are needed once; everything can be amended later.')}</p>
        </div>
        <form ref={form} className="stack" noValidate onSubmit={(e) => (e.preventDefault(), submit())}>
          <Sheet title={t('The scheme')}>
            <div className="form">
              <TextField label={t('Name of the scheme')} {...field('scheme.name')} />
              <TextField label={t('Country')} autoComplete="country-name" {...field('scheme.country')} />
              <TextField label={t('Currency')} help={t('Its three letters, like EUR.')} {...field('scheme.currency')} />
              <SuggestBox label={t('Time zone')} suggestions={Intl.supportedValuesOf('timeZone')} help={t('Days and times of the practice are counted here.')} {...field('scheme.zone')} />
            </div>
          </Sheet>
          <Sheet title={t('The first practice')}>
            <div className="form">
              <TextField label={t('Name of the practice')} autoComplete="organization" {...field('practice.name')} />
              <TextField label={t('Address')} autoComplete="street-address" {...field('practice.address')} />
              <TextField label={t('Phone')} type="tel" help={t('Owners see this number on every paper.')} {...field('practice.phone')} />
              <TextField label={t('Mail address of the practice')} type="email" {...field('practice.email')} />
            </div>
          </Sheet>
          <Sheet title={t('Its manager')}>
            <div className="form">
              <TextField label={t('Your name')} autoComplete="name" {...field('manager.name')} />
              <TextField label={t('Your mail address')} type="email" autoComplete="username" help={t('You sign in with it.')} {...field('manager.email')} />
              <TextField label={t('Password')} type="password" autoComplete="new-password" help={t('At least 10 signs.')} {...field('manager.password')} />
              <ErrorBar error={create.error} />
              {Object.keys(problems).length > 0 && (
                <p className="err" role="alert">
                  <b>{t('Nothing was created yet.')}</b>{' '}{t('The marked fields say what to change.')}
                </p>
              )}
              <Button type="submit" kind="ink">
                {t('Create and go on to the practice')}
              </Button>
            </div>
          </Sheet>
        </form>
      </main>
    </>
  );
}
