/** By what the bench is drawn. */
export type RendererKind = 'webgl' | 'canvas';

/** What the page's address asks for: `?render=canvas` or `?render=webgl`; null leaves the choice to the program. */
export function rendererAsked(search: string): RendererKind | null {
  const asked = new URLSearchParams(search).get('render');
  return asked === 'webgl' || asked === 'canvas' ? asked : null;
}
