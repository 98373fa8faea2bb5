import type { Box } from '@/lib/domain/geometry/box';
import type { LAYERS, Scene, Shape } from '@/lib/domain/layout/scene';

type SceneSvgProps = {
  scene: Pick<Scene, 'shapes'>;
  /** What of the scene is shown, mm: one box for all sizes of a garment keeps them at one scale. */
  box: Box;
  /** Address of a picture by its SHA-256. */
  href: (sha256: string) => string;
  /** What the drawing is, said to those who do not see it. */
  title: string;
  /** Only these layers are drawn; all where absent. */
  layers?: readonly (typeof LAYERS)[number][];
  className?: string;
};

/** A scene on a page, in millimetres; how large it is shown is up to the page's own rules. */
export function SceneSvg({ scene, box, href, title, layers, className }: SceneSvgProps) {
  const shapes = layers ? scene.shapes.filter(({ layer }) => layers.includes(layer)) : scene.shapes;
  return (
    <svg viewBox={`${box.x} ${box.y} ${box.width} ${box.height}`} role="img" className={className}>
      <title>{title}</title>
      {shapes.map((shape, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: shapes have no names; their order is what they are
        <SceneShape key={index} shape={shape} href={href} />
      ))}
    </svg>
  );
}

function SceneShape({ shape, href }: { shape: Shape; href: (sha256: string) => string }) {
  switch (shape.kind) {
    case 'path':
      return (
        <path
          d={shape.d}
          fill={shape.fill ?? 'none'}
          stroke={shape.stroke?.hex}
          strokeWidth={shape.stroke?.widthMm}
          strokeDasharray={shape.stroke?.dashMm?.join(' ')}
          strokeLinejoin={shape.stroke && 'round'}
        />
      );
    case 'glyphs':
      return (
        <path
          d={shape.d}
          fill={shape.fill}
          stroke={shape.outline?.hex}
          strokeWidth={shape.outline && 2 * shape.outline.widthMm}
          strokeLinejoin={shape.outline && 'round'}
          paintOrder={shape.outline && 'stroke'}
          data-print={shape.printId}
        />
      );
    case 'image':
      return (
        <image
          href={href(shape.sha256)}
          width={shape.widthPx}
          height={shape.heightPx}
          preserveAspectRatio="none"
          transform={`matrix(${shape.matrix.join(' ')})`}
          data-print={shape.printId}
        />
      );
  }
}
