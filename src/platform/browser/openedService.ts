const KEY = 'known-good.service-opened';

/** Whether the service data of a job was looked at in this window: a matter of view, kept outside the record. */
export function recallOpened(scenario: string): boolean {
  try {
    return (sessionStorage.getItem(KEY) ?? '').split(' ').includes(scenario);
  } catch {
    return false;
  }
}

export function rememberOpened(scenario: string): void {
  try {
    const known = (sessionStorage.getItem(KEY) ?? '').split(' ').filter((each) => each !== '');
    if (!known.includes(scenario)) sessionStorage.setItem(KEY, [...known, scenario].join(' '));
  } catch {
    // Without storage it is forgotten at a reload.
  }
}
