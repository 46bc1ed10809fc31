import type { Page } from '@playwright/test';

/** A picture as a few cells, each the mean colour of its piece of the screen: rows of red, green, blue. */
export interface Coarse {
  readonly across: number;
  readonly down: number;
  readonly cells: readonly number[];
}

/** Cells are some 27 pixels wide: letters melt into a grey, panels and drawings do not. */
const CELL_PX = 27;

/** Reads a PNG of the whole screen, or one that was kept cell by cell, in a page of the browser itself. */
export function coarsen(page: Page, png: Buffer, kept: boolean): Promise<Coarse> {
  return page.evaluate(
    async ([data, cell]) => {
      const image = new Image();
      image.src = `data:image/png;base64,${data}`;
      await image.decode();
      const { width, height } = image;
      const canvas = Object.assign(document.createElement('canvas'), { width, height });
      const pen = canvas.getContext('2d', { colorSpace: 'srgb', willReadFrequently: true });
      if (pen === null) throw new Error('no canvas');
      pen.drawImage(image, 0, 0);
      const { data: dots } = pen.getImageData(0, 0, width, height);
      const [across, down] = [Math.round(width / cell), Math.round(height / cell)];
      const sums = new Array<number>(across * down * 3).fill(0);
      const counts = new Array<number>(across * down).fill(0);
      for (let y = 0; y < height; y++) {
        for (let x = 0; x < width; x++) {
          const at = Math.floor((y * down) / height) * across + Math.floor((x * across) / width);
          counts[at] = (counts[at] ?? 0) + 1;
          for (let c = 0; c < 3; c++) {
            sums[at * 3 + c] = (sums[at * 3 + c] ?? 0) + (dots[(y * width + x) * 4 + c] ?? 0);
          }
        }
      }
      return {
        across,
        down,
        cells: sums.map((sum, i) => Math.round(sum / (counts[Math.floor(i / 3)] || 1))),
      };
    },
    [png.toString('base64'), kept ? 1 : CELL_PX] as const,
  );
}

/** The cells as a PNG of one dot each, to be kept and to be looked at. */
export async function drawn(page: Page, { across, down, cells }: Coarse): Promise<Buffer> {
  const data = await page.evaluate(
    ([across, down, cells]) => {
      const canvas = Object.assign(document.createElement('canvas'), { width: across, height: down });
      const pen = canvas.getContext('2d', { colorSpace: 'srgb' });
      if (pen === null) throw new Error('no canvas');
      const dots = pen.createImageData(across, down);
      for (let i = 0; i < across * down; i++) {
        for (let c = 0; c < 3; c++) dots.data[i * 4 + c] = cells[i * 3 + c] ?? 0;
        dots.data[i * 4 + 3] = 255;
      }
      pen.putImageData(dots, 0, 0);
      return canvas.toDataURL('image/png');
    },
    [across, down, cells] as const,
  );
  return Buffer.from(data.slice(data.indexOf(',') + 1), 'base64');
}

/** How far two pictures are from each other, in steps of 0 to 255. */
export interface Apart {
  /** Over all cells and colours. */
  readonly mean: number;
  /** Cells with a colour that is further off than `CELL_STEPS`. */
  readonly cells: number;
}

/** Another rasteriser of letters moves a cell of text by less than this; another colour or a panel's edge by more. */
export const CELL_STEPS = 24;

export function apart(a: Coarse, b: Coarse): Apart {
  if (a.across !== b.across || a.down !== b.down) return { mean: 255, cells: Math.max(a.across, b.across) };
  const off = a.cells.map((value, i) => Math.abs(value - (b.cells[i] ?? 0)));
  const far = new Set(off.flatMap((steps, i) => (steps > CELL_STEPS ? [Math.floor(i / 3)] : [])));
  return { mean: off.reduce((sum, steps) => sum + steps, 0) / off.length, cells: far.size };
}
