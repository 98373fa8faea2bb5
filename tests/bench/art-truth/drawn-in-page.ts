import type { Page } from '@playwright/test';

/** One call of a canvas's 2D context, or a property of it set: `['arc', 9, 9, 4, 0, 7]`, `['fillStyle', '#000']`. */
export type Call = readonly [name: string, ...given: (number | string)[]];

/** How a picture is drawn: by a browser's own canvas, then changed the way pictures are on their way to a shop. */
export type Drawing = {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly calls: readonly Call[];
  /** A photograph's pixels laid in a box (under `clip` of the calls before), made from a seed. */
  readonly photographs?: readonly { readonly at: number; readonly seed: number; readonly box: readonly number[] }[];
  /** Enlarged so many times by the browser's scaling. */
  readonly enlarged?: { readonly times: number; readonly smoothing: 'none' | 'low' | 'medium' | 'high' };
  /** Saved as a JPEG of this quality and opened again. */
  readonly jpegQuality?: number;
};

export type DrawnPixels = { readonly rgba: Uint8Array; readonly widthPx: number; readonly heightPx: number };

/** Makes a page ready to draw. */
export async function readyToDraw(page: Page): Promise<void> {
  // The compiler that runs a bench wraps functions in one of its own, which a page does not have.
  await page.evaluate('globalThis.__name ??= (wrapped) => wrapped');
}

/** The pixels of a drawing, made by the browser. */
export async function drawnPixels(page: Page, drawing: Drawing): Promise<DrawnPixels> {
  const { base64, ...size } = await page.evaluate(drawInPage, drawing);
  const rgba = new Uint8Array(Buffer.from(base64, 'base64'));
  return { rgba, ...size };
}

/** Runs in the page. */
async function drawInPage(drawing: Drawing): Promise<{ base64: string; widthPx: number; heightPx: number }> {
  const sheet = (widthPx: number, heightPx: number) => {
    const canvas = document.createElement('canvas');
    canvas.width = widthPx;
    canvas.height = heightPx;
    const context = canvas.getContext('2d', { willReadFrequently: true });
    if (!context) throw new Error('no canvas to draw on');
    return { canvas, context };
  };

  // Octaves of smooth noise in three channels with grain: as many colours as a camera's.
  const photograph = (seed: number, width: number, height: number) => {
    const hash = (x: number, y: number, z: number) => {
      let mixed = Math.imul(x, 374761393) ^ Math.imul(y, 668265263) ^ Math.imul(z ^ seed, 1274126177);
      mixed = Math.imul(mixed ^ (mixed >>> 13), 1103515245);
      return ((mixed ^ (mixed >>> 16)) >>> 0) / 2 ** 32;
    };
    const smooth = (share: number) => share * share * (3 - 2 * share);
    const noise = (x: number, y: number, z: number) => {
      const [left, top] = [Math.floor(x), Math.floor(y)];
      const [right, down] = [smooth(x - left), smooth(y - top)];
      const upper = hash(left, top, z) * (1 - right) + hash(left + 1, top, z) * right;
      const lower = hash(left, top + 1, z) * (1 - right) + hash(left + 1, top + 1, z) * right;
      return upper * (1 - down) + lower * down;
    };
    const data = new ImageData(width, height);
    for (let y = 0; y < height; y += 1) {
      for (let x = 0; x < width; x += 1) {
        const at = (y * width + x) * 4;
        const light =
          noise(x / 160, y / 160, 1) +
          noise(x / 50, y / 50, 2) / 2 +
          noise(x / 13, y / 13, 3) / 4 +
          noise(x / 4, y / 4, 4) / 8;
        for (let channel = 0; channel < 3; channel += 1) {
          const tint = noise(x / 220, y / 220, 10 + channel) - 0.5;
          const grain = (hash(x, y, 20 + channel) - 0.5) * 14;
          data.data[at + channel] = 20 + (light / 1.875) * 200 + tint * 150 + grain;
        }
        data.data[at + 3] = 255;
      }
    }
    return data;
  };

  // What a camera's picture is of has edges: as sharp as its pixels can show them.
  const strew = (context: CanvasRenderingContext2D, seed: number, width: number, height: number) => {
    let state = seed;
    const share = () => {
      state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
      return state / 2 ** 32;
    };
    for (let thing = 0; thing < (width * height) / 3_000; thing += 1) {
      const [x, y, size, turn] = [share() * width, share() * height, 6 + share() * 40, share() * 3];
      context.fillStyle = `hsl(${Math.floor(share() * 360)} 35% ${Math.floor(15 + share() * 65)}%)`;
      context.globalAlpha = 0.55 + share() * 0.4;
      context.beginPath();
      if (share() < 0.5) context.ellipse(x, y, size, size * (0.3 + share()), turn, 0, 7);
      else
        for (const corner of [0, 1, 2, 3]) {
          context.lineTo(x + size * Math.cos(turn + corner * 1.7), y + size * Math.sin(turn + corner * 1.7));
        }
      context.fill();
    }
    context.globalAlpha = 1;
  };

  const drawn = sheet(drawing.widthPx, drawing.heightPx);
  const lay = (index: number) => {
    for (const { at, seed, box } of drawing.photographs ?? []) {
      if (at !== index) continue;
      const [x = 0, y = 0, width = 1, height = 1] = box;
      const pixels = sheet(width, height);
      pixels.context.putImageData(photograph(seed, width, height), 0, 0);
      strew(pixels.context, seed, width, height);
      drawn.context.drawImage(pixels.canvas, x, y);
    }
  };
  const context = drawn.context as unknown as Record<string, unknown>;
  drawing.calls.forEach(([name, ...given], index) => {
    lay(index);
    const member = context[name];
    if (typeof member === 'function') member.apply(drawn.context, given);
    else context[name] = given[0];
  });
  lay(drawing.calls.length);

  let shown = drawn;
  if (drawing.enlarged) {
    const { times, smoothing } = drawing.enlarged;
    const larger = sheet(Math.round(drawing.widthPx * times), Math.round(drawing.heightPx * times));
    larger.context.imageSmoothingEnabled = smoothing !== 'none';
    if (smoothing !== 'none') larger.context.imageSmoothingQuality = smoothing;
    larger.context.drawImage(drawn.canvas, 0, 0, larger.canvas.width, larger.canvas.height);
    shown = larger;
  }
  if (drawing.jpegQuality !== undefined) {
    const { jpegQuality } = drawing;
    const blob = await new Promise<Blob | null>((resolve) => shown.canvas.toBlob(resolve, 'image/jpeg', jpegQuality));
    if (!blob) throw new Error('no JPEG');
    const bitmap = await createImageBitmap(blob);
    const opened = sheet(bitmap.width, bitmap.height);
    opened.context.drawImage(bitmap, 0, 0);
    shown = opened;
  }
  const { width: widthPx, height: heightPx } = shown.canvas;
  const pixels = shown.context.getImageData(0, 0, widthPx, heightPx).data;
  const base64 = await new Promise<string>((resolve) => {
    const reader = new FileReader();
    reader.onload = () => resolve(String(reader.result).split(',')[1] ?? '');
    reader.readAsDataURL(new Blob([pixels]));
  });
  return { base64, widthPx, heightPx };
}
