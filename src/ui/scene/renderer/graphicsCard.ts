/** What browsers call a graphics card that is made of software. */
const IN_SOFTWARE = /swiftshader|llvmpipe|softpipe|software|basic render/i;

/** Whether WebGL is there at all and can do what the drawing needs; with `byCard`, only if a graphics card does it. */
export function hasWebGL(byCard: boolean): boolean {
  try {
    const wanted: WebGLContextAttributes = { stencil: true, failIfMajorPerformanceCaveat: byCard };
    const gl = document.createElement('canvas').getContext('webgl', wanted);
    if (!(gl instanceof WebGLRenderingContext)) return false;
    const fit = gl.getContextAttributes()?.stencil === true && !(byCard && isSoftware(gl));
    // There may be few of them at a time.
    gl.getExtension('WEBGL_lose_context')?.loseContext();
    return fit;
  } catch {
    return false;
  }
}

/** Not every browser keeps to the caveat that it is asked to heed; the name of what draws tells. */
function isSoftware(gl: WebGLRenderingContext): boolean {
  const unmasked = gl.getExtension('WEBGL_debug_renderer_info');
  const names = [gl.RENDERER, ...(unmasked === null ? [] : [unmasked.UNMASKED_RENDERER_WEBGL])];
  return names.some((name) => IN_SOFTWARE.test(String(gl.getParameter(name))));
}
