import type { Box } from '@/lib/domain/geometry/box';
import type { Shape } from '@/lib/domain/layout/scene';

export type SceneSvgOptions = {
  /** What of the scene is shown, mm. */
  readonly box: Box;
  /** Size of the drawing, px. */
  readonly widthPx: number;
  readonly heightPx: number;
  /** Address of a picture, or null to leave it out. */
  readonly href: (sha256: string) => string | null;
};

/** Shapes of a scene as a whole SVG document, painted in their order. */
export function svgOfShapes(shapes: readonly Shape[], { box, widthPx, heightPx, href }: SceneSvgOptions): string {
  const viewBox = [box.x, box.y, box.width, box.height].map(short).join(' ');
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${widthPx}" height="${heightPx}" viewBox="${viewBox}" preserveAspectRatio="none">`,
    ...shapes.map((shape) => svgOfShape(shape, href)),
    '</svg>',
  ].join('');
}

function svgOfShape(shape: Shape, href: SceneSvgOptions['href']): string {
  switch (shape.kind) {
    case 'path':
      return `<path d="${shape.d}" fill="${shape.fill ?? 'none'}"${strokeOf(shape)}/>`;
    case 'glyphs':
      return `${letterOutline(shape)}<path d="${shape.d}" fill="${shape.fill}"/>`;
    case 'image': {
      const address = href(shape.sha256);
      if (address === null) return '';
      const size = `width="${shape.widthPx}" height="${shape.heightPx}" preserveAspectRatio="none"`;
      return `<image href="${escaped(address)}" ${size} transform="matrix(${shape.matrix.join(' ')})"/>`;
    }
  }
}

/** The line round letters lies under their fill, drawn first: not every renderer knows of painting strokes before fills. */
function letterOutline({ d, outline }: Extract<Shape, { kind: 'glyphs' }>): string {
  if (!outline) return '';
  const { hex, widthMm } = outline;
  return `<path d="${d}" fill="${hex}" stroke="${hex}" stroke-width="${2 * widthMm}" stroke-linejoin="round"/>`;
}

function strokeOf({ stroke }: Extract<Shape, { kind: 'path' }>): string {
  if (!stroke) return '';
  const dash = stroke.dashMm ? ` stroke-dasharray="${stroke.dashMm.join(' ')}"` : '';
  return ` stroke="${stroke.hex}" stroke-width="${stroke.widthMm}" stroke-linejoin="round"${dash}`;
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('"', '&quot;').replaceAll('<', '&lt;');
}

function short(value: number): string {
  return String(Math.round(value * 1000) / 1000);
}
