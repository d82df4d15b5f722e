/** What each stored secret is bound to: its row, and for one that is sent along also where to. */
export const aboutSecret = {
  channel: (channel: string, address: string | null | undefined) => `centre_channel ${channel} ${address ?? ''}`,
  webhook: (webhook: string) => `webhook ${webhook}`,
  centreKey: (key: string) => `centre_key ${key}`,
};
