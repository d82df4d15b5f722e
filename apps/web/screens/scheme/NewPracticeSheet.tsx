import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { SchemeScreen } from '#libs/contracts/screens/board';
import { newPractice, type NewPractice } from '#libs/contracts/session';
import { post } from '../../api/client.js';
import { Notice } from '../../design/Notice.js';
import { Sheet } from '../../design/Sheet.js';
import { TextField } from '../../design/TextField.js';
import { t } from '../../words/t.js';
import { AddForm } from '../practice/AddForm.js';

/** A practice joins the scheme; its manager is invited at the practice's own address. */
export function NewPracticeSheet() {
  const cache = useQueryClient();
  const add = useMutation({
    mutationFn: (body: NewPractice) => post<SchemeScreen>('/scheme/practices', body),
    onSuccess: (screen) => cache.setQueryData(['scheme'], screen),
  });
  return (
    <Sheet title={t('Another practice joins')}>
      {add.isSuccess && <Notice>{t('A mail went to {email}: behind its link {manager} chooses a password.', { email: add.variables.email, manager: add.variables.managerName })}</Notice>}
      <AddForm opens={t('Add a practice')} saves={t('Add this practice')} schema={newPractice} add={add}>
        {(entry) => (
          <>
            <TextField label={t('Name of the practice')} {...entry.field('name')} autoComplete="off" />
            <TextField label={t('Place')} {...entry.field('place')} autoComplete="off" />
            <TextField label={t('Address')} {...entry.field('address')} autoComplete="off" />
            <TextField label={t('Phone')} {...entry.field('phone')} autoComplete="off" />
            <TextField label={t('Mail address of the practice')} type="email" {...entry.field('email')} autoComplete="off" />
            <TextField label={t('Two letters for its order numbers')} {...entry.field('letters')} help={t('Not I or O; no other practice has them.')} autoComplete="off" />
            <TextField label={t('Name of its manager')} {...entry.field('managerName')} autoComplete="off" />
            <TextField label={t('Mail address of the manager')} type="email" {...entry.field('managerEmail')} autoComplete="off" />
          </>
        )}
      </AddForm>
    </Sheet>
  );
}
