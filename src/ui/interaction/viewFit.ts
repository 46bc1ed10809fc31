import { type Box, SHEET, type Vec } from './layout/geometry.ts';

/** Where the sheet lies in its host: CSS pixels a bench unit, and the sheet's corner. */
export interface SheetFit {
  readonly scale: number;
  readonly offsetX: number;
  readonly offsetY: number;
}

/** The part of the bench a host of this size shows, in bench units. It may reach past the sheet. */
export function windowOf({ scale, offsetX, offsetY }: SheetFit, width: number, height: number): Box {
  return { x: -offsetX / scale, y: -offsetY / scale, w: width / scale, h: height / scale };
}

/**
 * Lays a window of this scale over `needs`. Room to spare goes to `likes`, and never past the sheet while there is sheet to show;
 * where even `needs` is larger than the window, its upper left part is shown.
 */
export function fitWindow(scale: number, needs: Box, likes: Box, width: number, height: number): SheetFit {
  const [w, h] = [width / scale, height / scale];
  return {
    scale,
    offsetX: -scale * along(w, { from: needs.x, size: needs.w }, { from: likes.x, size: likes.w }, SHEET.w),
    offsetY: -scale * along(h, { from: needs.y, size: needs.h }, { from: likes.y, size: likes.h }, SHEET.h),
  };
}

interface Span {
  readonly from: number;
  readonly size: number;
}

/** One axis of `fitWindow`: where a window of this size begins. */
function along(size: number, needs: Span, likes: Span, sheet: number): number {
  if (size >= sheet) return (sheet - size) / 2;
  const spare = size - needs.size;
  if (spare <= 0) return between(needs.from, 0, sheet - size);
  const begin = between(likes.from + (likes.size - size) / 2, needs.from - spare, needs.from);
  return between(begin, 0, sheet - size);
}

function between(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}

/** The same fit, moved so that no room is lost beside the sheet. */
export function keptOnSheet({ scale, offsetX, offsetY }: SheetFit, width: number, height: number): SheetFit {
  const axis = (offset: number, room: number, sheet: number): number =>
    room >= sheet * scale ? (room - sheet * scale) / 2 : between(offset, room - sheet * scale, 0);
  return { scale, offsetX: axis(offsetX, width, SHEET.w), offsetY: axis(offsetY, height, SHEET.h) };
}

/** The same place of the sheet under `at` (host pixels), at another scale. */
export function scaledAbout(fit: SheetFit, scale: number, at: Vec): SheetFit {
  const by = scale / fit.scale;
  return { scale, offsetX: at.x - (at.x - fit.offsetX) * by, offsetY: at.y - (at.y - fit.offsetY) * by };
}

/**
 * Between two fits, `share` of the way: the scale by equal factors, and the sheet about the one place that stands still, so that the
 * move is a plain going in or out and nothing swings by.
 */
export function betweenFits(from: SheetFit, to: SheetFit, share: number): SheetFit {
  const scale = from.scale * (to.scale / from.scale) ** share;
  const growth = to.scale - from.scale;
  const part = Math.abs(growth) < from.scale * 1e-4 ? share : (scale - from.scale) / growth;
  return {
    scale,
    offsetX: from.offsetX + (to.offsetX - from.offsetX) * part,
    offsetY: from.offsetY + (to.offsetY - from.offsetY) * part,
  };
}

export function sameFit(a: SheetFit, b: SheetFit): boolean {
  return (
    Math.abs(a.scale - b.scale) < a.scale * 1e-4 &&
    Math.abs(a.offsetX - b.offsetX) < 0.05 &&
    Math.abs(a.offsetY - b.offsetY) < 0.05
  );
}

/** The least move that brings a box (bench units) into the window, with a margin in pixels; a box too large shows its corner. */
export function bringingIn(
  fit: SheetFit,
  box: Box,
  width: number,
  height: number,
  marginPx: number,
): SheetFit {
  const axis = (offset: number, from: number, size: number, room: number): number => {
    const [low, high] = [from * fit.scale + offset - marginPx, (from + size) * fit.scale + offset + marginPx];
    if (low < 0 || high - low > room) return offset - low;
    return high > room ? offset - (high - room) : offset;
  };
  const moved = {
    scale: fit.scale,
    offsetX: axis(fit.offsetX, box.x, box.w, width),
    offsetY: axis(fit.offsetY, box.y, box.h, height),
  };
  return keptOnSheet(moved, width, height);
}
