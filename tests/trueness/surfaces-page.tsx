import Konva from 'konva';
import { flushSync } from 'react-dom';
import { createRoot } from 'react-dom/client';
import { Stage } from 'react-konva';
import { SceneSvg } from '@/components/flat/scene-svg';
import { SceneLayer } from '@/components/table/scene-layer';
import type { Box } from '@/lib/domain/geometry/box';
import type { Scene } from '@/lib/domain/layout/scene';
import type { Place } from './expected-place';

// Runs in the browser: mounts the page's and the table's surface of one scene and measures both with the browser's and
// Konva's own means.

export type SurfaceRequest = {
  readonly scene: Scene;
  readonly box: Box;
  readonly seamData: string;
  readonly svgWidthPx: number;
  readonly pxPerMm: number;
  readonly originPx: Place;
  /** Pixel positions of each print's picture that are to be found on the surface. */
  readonly prints: readonly { readonly printId: string; readonly pixels: readonly Place[] }[];
};

/** What was found on one surface: the seam's lowest place, and each print's pixels; px of the screen or the stage. */
export type SurfaceFinding = {
  readonly pxPerMm: number;
  readonly seamLowest: Place;
  readonly seamShoulder: Place;
  readonly prints: readonly { readonly printId: string; readonly places: readonly Place[] }[];
};
export type SurfaceFindings = { readonly svg: SurfaceFinding; readonly konva: SurfaceFinding };

declare global {
  interface Window {
    measureSurfaces: (request: SurfaceRequest) => Promise<SurfaceFindings>;
  }
}

/** One clear pixel: how a picture is stretched does not depend on what it shows. */
const ONE_PIXEL = 'data:image/gif;base64,R0lGODlhAQABAIAAAAAAAP///yH5BAEAAAAALAAAAAABAAEAAAIBRAA7';

function element(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (!found) throw new Error(`no #${id}`);
  return found;
}

function measureSvg(request: SurfaceRequest): SurfaceFinding {
  const svg = element('page').querySelector('svg');
  const seam = [...(svg?.querySelectorAll('path') ?? [])].find((path) => path.getAttribute('d') === request.seamData);
  if (!svg || !seam) throw new Error('the page shows no seam');
  const at = (path: SVGGraphicsElement, { x, y }: Place): Place => {
    const matrix = path.getScreenCTM();
    if (!matrix) throw new Error('not on the screen');
    const point = new DOMPoint(x, y).matrixTransform(matrix);
    return { x: point.x, y: point.y };
  };
  const length = seam.getTotalLength();
  return {
    pxPerMm: svg.getBoundingClientRect().width / request.box.width,
    seamLowest: at(seam, seam.getPointAtLength(length / 2)),
    seamShoulder: at(seam, seam.getPointAtLength(0)),
    prints: request.prints.map(({ printId, pixels }) => {
      const image = svg.querySelector<SVGImageElement>(`image[data-print="${printId}"]`);
      if (!image) throw new Error(`the page shows no ${printId}`);
      return { printId, places: pixels.map((pixel) => at(image, pixel)) };
    }),
  };
}

function measureStage(request: SurfaceRequest): SurfaceFinding {
  const stage = Konva.stages.at(-1);
  const seam = stage?.find<Konva.Path>('Path').find((path) => path.data() === request.seamData);
  if (!stage || !seam) throw new Error('the table shows no seam');
  const onStage = (node: Konva.Node, place: Place | null): Place => {
    if (!place) throw new Error('the seam has no such place');
    return node.getAbsoluteTransform().point(place);
  };
  return {
    pxPerMm: request.pxPerMm,
    seamLowest: onStage(seam, seam.getPointAtLength(seam.getLength() / 2)),
    seamShoulder: onStage(seam, seam.getPointAtLength(0)),
    prints: request.prints.map(({ printId, pixels }) => {
      const image = stage.findOne<Konva.Image>(`#${printId}`);
      if (!image) throw new Error(`the table shows no ${printId}`);
      // The node's own size must be that of the art, or its corners would not be the picture's.
      const { widthPx, heightPx } = sizeOf(request.scene, printId);
      if (image.width() !== widthPx || image.height() !== heightPx) throw new Error(`${printId} has another size`);
      return { printId, places: pixels.map((pixel) => onStage(image, pixel)) };
    }),
  };
}

function sizeOf(scene: Scene, printId: string): { widthPx: number; heightPx: number } {
  const shape = scene.shapes.find((each) => each.kind === 'image' && each.printId === printId);
  if (shape?.kind !== 'image') throw new Error(`no ${printId}`);
  return shape;
}

const pageRoot = createRoot(element('page'));
const tableRoot = createRoot(element('table'));

window.measureSurfaces = async (request) => {
  const { scene, box, svgWidthPx, pxPerMm, originPx } = request;
  element('page').style.width = `${svgWidthPx}px`;
  flushSync(() => pageRoot.render(<SceneSvg scene={scene} box={box} href={() => ONE_PIXEL} title="A shirt" />));
  flushSync(() =>
    tableRoot.render(
      <Stage width={1200} height={1000}>
        <SceneLayer scene={scene} pxPerMm={pxPerMm} originPx={originPx} href={() => ONE_PIXEL} />
      </Stage>,
    ),
  );
  await new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));
  return { svg: measureSvg(request), konva: measureStage(request) };
};
