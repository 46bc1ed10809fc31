import { afterEach, describe, expect, it, vi } from 'vitest';
import { hasWebGL } from '../../../src/ui/scene/renderer/graphicsCard.ts';
import { rendererAsked } from '../../../src/ui/scene/renderer/RendererKind.ts';

/** A context as a browser gives it, by these names; with a stencil or without. */
class FakeContext {
  readonly RENDERER = 1;
  constructor(
    private readonly names: { readonly masked: string; readonly unmasked: string | null },
    readonly lost: { times: number },
    private readonly stencil = true,
  ) {}
  getContextAttributes = () => ({ stencil: this.stencil });
  getParameter = (which: number) => (which === 1 ? this.names.masked : this.names.unmasked);
  getExtension(name: string): object | null {
    if (name === 'WEBGL_lose_context') return { loseContext: () => (this.lost.times += 1) };
    return this.names.unmasked === null ? null : { UNMASKED_RENDERER_WEBGL: 2 };
  }
}

function browser(
  make: (options: { readonly failIfMajorPerformanceCaveat: boolean }) => FakeContext | null,
): void {
  vi.stubGlobal('WebGLRenderingContext', FakeContext);
  vi.stubGlobal('document', {
    createElement: () => ({
      getContext: (_: string, options: { readonly failIfMajorPerformanceCaveat: boolean }) => make(options),
    }),
  });
}

const CARD = { masked: 'WebKit WebGL', unmasked: 'ANGLE (Some Maker, Some Card, driver)' };
// As one headless browser names it, which does not keep to the caveat.
const SOFTWARE = { masked: 'WebKit WebGL', unmasked: 'ANGLE (Google, Vulkan 1.3.0 (SwiftShader Device))' };

afterEach(() => {
  vi.unstubAllGlobals();
});

describe('WebGL by a graphics card', () => {
  it('is there where the browser names one, and what was opened to ask is let go', () => {
    const lost = { times: 0 };
    browser(() => new FakeContext(CARD, lost));
    expect(hasWebGL(true)).toBe(true);
    expect(lost.times).toBe(1);
  });

  it('is not where the browser refuses to do it slowly, though it would do it when made to', () => {
    const slowly = new FakeContext({ masked: 'WebKit WebGL', unmasked: null }, { times: 0 });
    browser(({ failIfMajorPerformanceCaveat }) => (failIfMajorPerformanceCaveat ? null : slowly));
    expect(hasWebGL(true)).toBe(false);
    expect(hasWebGL(false)).toBe(true);
  });

  it('is not where the name of what draws tells that it is software, whichever of the names does', () => {
    for (const names of [SOFTWARE, { masked: 'llvmpipe, or similar', unmasked: null }]) {
      browser(() => new FakeContext(names, { times: 0 }));
      expect(hasWebGL(true)).toBe(false);
      expect(hasWebGL(false)).toBe(true);
    }
  });

  it('is not without a stencil, without WebGL, or where asking throws', () => {
    browser(() => new FakeContext(CARD, { times: 0 }, false));
    expect(hasWebGL(false)).toBe(false);
    browser(() => null);
    expect(hasWebGL(false)).toBe(false);
    browser(() => {
      throw new Error('blocked');
    });
    expect(hasWebGL(false)).toBe(false);
  });
});

it('the address may ask for either way of drawing, and for nothing else', () => {
  expect(rendererAsked('?render=canvas')).toBe('canvas');
  expect(rendererAsked('?a=1&render=webgl')).toBe('webgl');
  expect(rendererAsked('?render=other')).toBeNull();
  expect(rendererAsked('')).toBeNull();
});
