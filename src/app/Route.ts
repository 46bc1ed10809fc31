/** Where the page is. The address carries a scenario's id and nothing else. */
export type Route = { readonly screen: 'board' } | { readonly screen: 'job'; readonly scenario: string };

export function parseRoute(hash: string): Route {
  const scenario = /^#\/job\/([a-z0-9-]+)$/.exec(hash)?.[1];
  return scenario === undefined ? { screen: 'board' } : { screen: 'job', scenario };
}

export function routeHash(route: Route): string {
  return route.screen === 'board' ? '#/' : `#/job/${route.scenario}`;
}
