/** Where the page is. The address carries a scenario's id, or the key of a kept sitting, and nothing else. */
export type Route =
  | { readonly screen: 'board' }
  /** An address that leads nowhere. */
  | { readonly screen: 'unknown' }
  | { readonly screen: 'job'; readonly scenario: string }
  /** Where instructors write: the shelf of drafts, or the draft that is kept under this name. */
  | { readonly screen: 'back-room'; readonly draft: string | null }
  /** The debrief of a finished job that is kept on this device under `kept`. */
  | { readonly screen: 'debrief'; readonly scenario: string; readonly kept: string };

export function parseRoute(hash: string): Route {
  const [room, draft] = /^#\/back-room(?:\/([a-z0-9]+))?$/.exec(hash) ?? [];
  if (room !== undefined) return { screen: 'back-room', draft: draft ?? null };
  const [, screen, kept, scenario] = /^#\/(job|debrief)\/(([a-z0-9-]+)(?:@\d+)?)$/.exec(hash) ?? [];
  if (kept === undefined || scenario === undefined)
    return { screen: /^(?:#\/?)?$/.test(hash) ? 'board' : 'unknown' };
  if (screen === 'debrief') return { screen: 'debrief', scenario, kept };
  return kept === scenario ? { screen: 'job', scenario } : { screen: 'unknown' };
}

export function routeHash(route: Route): string {
  switch (route.screen) {
    case 'board':
    case 'unknown':
      return '#/';
    case 'job':
      return `#/job/${route.scenario}`;
    case 'back-room':
      return route.draft === null ? '#/back-room' : `#/back-room/${route.draft}`;
    case 'debrief':
      return `#/debrief/${route.kept}`;
  }
}
