import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { fileKind } from '@/lib/server/image/file-kind';
import { type UnpackedArt, unpackArt } from '@/lib/server/image/unpack-art';
import { unpackPdf } from '@/lib/server/image/unpack-pdf';
import { type Scratch, scratchFolder } from './scratch-folder';
import { type PdfPage, pdf } from './small-pdf';

let scratch: Scratch;
const asked: string[] = [];
const remote = createServer((request, response) => {
  asked.push(request.url ?? '');
  response.end('<svg xmlns="http://www.w3.org/2000/svg"><rect id="r" width="9" height="9"/></svg>');
});
let remoteUrl: string;

beforeAll(async () => {
  scratch = scratchFolder();
  await new Promise<void>((resolve) => {
    remote.listen(0, '127.0.0.1', resolve);
  });
  remoteUrl = `http://127.0.0.1:${(remote.address() as AddressInfo).port}`;
});
afterAll(() => {
  remote.close();
  scratch.remove();
});

// Twenty times as wide as high: drawn at 4500 × 225 px, quickly.
const SPACE = 'xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink"';
const svg = (inside: string, root = 'viewBox="0 0 200 10"') => `<svg ${SPACE} ${root}>${inside}</svg>`;
const BAR = '<rect x="50" width="100" height="10" fill="#B0302A"/>';

function draw(text: string | Uint8Array): Promise<UnpackedArt> {
  return unpackArt(scratch.keep(text), 'image/svg+xml');
}

async function drawn(text: string | Uint8Array): Promise<Extract<UnpackedArt, { ok: true }>> {
  const unpacked = await draw(text);
  if (!unpacked.ok) throw new Error(unpacked.reason);
  return unpacked;
}

/** Red, green, blue, alpha at a share of the width, half-way down. */
function at({ pixels: { rgba, widthPx, heightPx } }: Extract<UnpackedArt, { ok: true }>, share: number): number[] {
  const start = (Math.floor(heightPx / 2) * widthPx + Math.floor(widthPx * share)) * 4;
  return [...rgba.subarray(start, start + 4)];
}

const RED = [0xb0, 0x30, 0x2a, 255];
const CLEAR = [0, 0, 0, 0];

describe('the size of an SVG', () => {
  // Source: CSS Values 4, 6.2 (1 in = 96 px = 2.54 cm = 72 pt); PNG at 300 px per inch.
  it.each([
    ['viewBox="0 0 200 10"', [4_500, 225]],
    ['width="20in" height="1in"', [6_000, 300]],
    ['width="508mm" height="25.4mm"', [6_000, 300]],
    ['width="1440pt" height="72pt"', [6_000, 300]],
    ['width="1920" height="96px"', [6_000, 300]],
    ['width="100%" viewBox="0 0 200 10"', [4_500, 225]],
    ['height="1in" viewBox="0 0 200 10"', [6_000, 300]],
  ])('with %s is drawn at %j', async (root, size) => {
    const { pixels } = await drawn(svg('<rect width="100%" height="100%"/>', root));
    expect([pixels.widthPx, pixels.heightPx]).toEqual(size);
  });

  it('never passes the limit of pixels', async () => {
    const { pixels } = await drawn(svg('<rect width="10" height="10"/>', 'width="900in" height="9in"'));
    expect(pixels.widthPx * pixels.heightPx).toBeLessThanOrEqual(80_000_000);
    expect(pixels.widthPx / pixels.heightPx).toBeCloseTo(100, 1);
  });
});

describe('an SVG', () => {
  it('keeps shapes, styles, gradients and pictures that are inside it', async () => {
    const picture = readFileSync('tests/data/png/basn2c08.png').toString('base64');
    const inside = `
      <style>.a { fill: #B0302A; stroke: none } @import url("x.css"); @font-face { font-family: x; src: url(x.woff) }</style>
      <linearGradient id="g"><stop offset="0" stop-color="#B0302A"/><stop offset="1" style="stop-color:#B0302A"/></linearGradient>
      <rect class="a" width="20" height="10"/>
      <rect style="fill:url(#g)" x="40" width="20" height="10"/>
      <symbol id="s" viewBox="0 0 1 1"><rect width="1" height="1" fill="#B0302A"/></symbol>
      <use xlink:href="#s" x="80" width="20" height="10"/>
      <image x="120" width="40" height="10" preserveAspectRatio="none" xlink:href="data:image/png;base64,${picture}"/>`;
    const whole = await drawn(svg(inside));
    expect(whole.notes).toEqual([]);
    for (const share of [0.05, 0.25, 0.45]) expect(at(whole, share)).toEqual(RED);
    expect(at(whole, 0.15)).toEqual(CLEAR);
    expect(at(whole, 0.7)[3]).toBe(255);
  });

  it('is read as drawing programs write it: namespaces as entities, prefixes, parts of their own', async () => {
    const text = `<?xml version="1.0"?><!DOCTYPE svg [<!ENTITY ns "http://www.w3.org/2000/svg"><!ENTITY own 'urn:own'>]>
      <v:svg xmlns:v="&ns;" xmlns:own="&own;" viewBox="0 0 200 10"><own:grid on="1"><v:rect width="9"/></own:grid><v:switch>
      <v:foreignObject requiredExtensions="urn:own"/><v:g><v:rect x="50" width="100" height="10" fill="#B0302A"/></v:g>
      </v:switch></v:svg>`;
    expect(await fileKind(Buffer.from(text))).toEqual({ kind: 'art', mediaType: 'image/svg+xml' });
    const whole = await drawn(text);
    expect(whole.notes).toEqual([]);
    expect([at(whole, 0.5), at(whole, 0.02)]).toEqual([RED, CLEAR]);
    expect(at(await drawn(Buffer.from(`\ufeff${svg(BAR)}`, 'utf16le')), 0.5)).toEqual(RED);
  });

  it('loses scripts, what lies outside it, and what cannot be drawn, and says so', async () => {
    const neighbour = scratch.keep(readFileSync('tests/data/png/basn2c08.png'), 'neighbour.png');
    const inside = `${BAR}
      <script>alert(1)</script><rect onclick="alert(1)" width="1" height="1" fill="none"/>
      <image width="40" height="10" xlink:href="${remoteUrl}/image.png"/>
      <image width="40" height="10" href="file://${neighbour}"/><image width="40" height="10" href="neighbour.png"/>
      <use href="${remoteUrl}/sprite.svg#r"/><rect width="40" height="10" fill="url(${remoteUrl}/paint.svg#p)"/>
      <rect width="40" height="10" style="fill:u\\72l(${remoteUrl}/paint.svg#p)"/>
      <style>@import "${remoteUrl}/import.css"; rect { filter: url(${remoteUrl}/filter.svg#f) }</style>
      <foreignObject width="40" height="10"><p xmlns="http://www.w3.org/1999/xhtml">x</p></foreignObject>
      <filter id="i"><feImage href="${remoteUrl}/fe.png"/></filter><text y="9">Otterbank</text>
      <rect width="1" height="1"><animate attributeName="x" to="9"/></rect>`;
    const left = await drawn(svg(inside));
    expect([...left.notes].sort()).toEqual([
      'firstFrameOnly',
      'linkedPicturesLeftOut',
      'partsLeftOut',
      'scriptsLeftOut',
      'textLeftOut',
    ]);
    expect([at(left, 0.5), at(left, 0.1)]).toEqual([RED, [0, 0, 0, 255]]);
    expect(asked).toEqual([]);
  });

  it('with nothing left to draw says what it was', async () => {
    expect(await draw(svg('<text y="9">Otterbank</text>'))).toEqual({ ok: false, reason: 'onlyText' });
    expect(await draw(svg('<image width="9" height="9" href="logo.png"/>'))).toEqual({
      ok: false,
      reason: 'onlyLinked',
    });
    expect(await draw(svg('<g/>'))).toEqual({ ok: false, reason: 'nothingToPrint' });
    expect(await draw(svg('<rect width="9"'))).toEqual({ ok: false, reason: 'damaged' });
    expect(await draw(svg('<rect width="9" height="&nobody;"/>'))).toEqual({ ok: false, reason: 'damaged' });
  });
});

describe('an SVG that grows as it is drawn', () => {
  const tenfold = (element: (level: number) => string) =>
    Array.from({ length: 10 }, (_, level) => element(level)).join('');
  const bombs: readonly [string, string][] = [
    [
      'by use',
      svg(
        `<defs><g id="l0">${BAR}</g>${tenfold((l) => `<g id="l${l + 1}">${`<use href="#l${l}"/>`.repeat(10)}</g>`)}</defs><use href="#l10"/>`,
      ),
    ],
    [
      'by patterns named in a style sheet',
      svg(
        `<style>${tenfold((l) => `.p${l} { fill: url(#p${l}) }`)}</style><pattern id="p0" width="1" height="1">${BAR}</pattern>${tenfold(
          (l) =>
            `<pattern id="p${l + 1}" width="1" height="1">${`<rect class="p${l}" width="9" height="9"/>`.repeat(10)}</pattern>`,
        )}<rect width="9" height="9" fill="url(#p10)"/>`,
      ),
    ],
    [
      'by markers',
      svg(
        `<marker id="m">${BAR.repeat(1_000)}</marker><path marker-mid="url(#m)" d="M0 0${' L1 1'.repeat(1_000)}" stroke="#000"/>`,
      ),
    ],
    [
      'by entities of entities',
      `<!DOCTYPE svg [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;">]>${svg('<rect id="&b;" width="9" height="9"/>')}`,
    ],
    [
      'by one entity many times over',
      `<!DOCTYPE svg [<!ENTITY a "${'a'.repeat(500)}">]>${svg(`<rect id="${'&a;'.repeat(10_000)}" width="9" height="9"/>`)}`,
    ],
    ['by depth', svg(`${'<g>'.repeat(5_000)}${BAR}${'</g>'.repeat(5_000)}`)],
    [
      'by a chain of references',
      svg(Array.from({ length: 5_000 }, (_, l) => `<g id="c${l}"><use href="#c${l + 1}"/></g>`).join('')),
    ],
    [
      'by filters',
      svg(
        `<filter id="f"><feGaussianBlur stdDeviation="9"/></filter>${'<g filter="url(#f)">'.repeat(100)}${BAR}${'</g>'.repeat(100)}`,
      ),
    ],
    ['by the pictures inside it', svg(hugePictures())],
  ];

  it.each(bombs)('%s is refused before it is drawn', async (_how, text) => {
    expect(text.length).toBeLessThan(600_000);
    expect(await draw(text)).toEqual({ ok: false, reason: 'tooInvolved' });
  });

  it('reads no file that an entity points at', async () => {
    const text = `<!DOCTYPE svg [<!ENTITY x SYSTEM "file:///etc/hostname">]>${svg('<rect id="&x;" width="9" height="9"/>')}`;
    expect(await draw(text)).toEqual({ ok: false, reason: 'damaged' });
  });

  it('draws what refers to itself as nothing, and the rest as ever', async () => {
    expect(at(await drawn(svg(`<g id="me"><use href="#me"/></g>${BAR}`)), 0.5)).toEqual(RED);
  });
});

describe('a PDF', () => {
  const bar: PdfPage = { widthPt: 1_440, heightPt: 72, content: '0.690 0.188 0.165 rg 360 0 720 72 re f' };

  it('is drawn from its first page, on nothing', async () => {
    const path = scratch.keep(pdf([bar, bar]));
    expect(await fileKind(readFileSync(path))).toEqual({ kind: 'art', mediaType: 'application/pdf' });
    const page = await unpackArt(path, 'application/pdf');
    if (!page.ok) throw new Error(page.reason);
    // 20 × 1 in at 300 px per inch (ISO 32000-1, 8.3.2.3: 72 pt an inch).
    expect([page.pixels.widthPx, page.pixels.heightPx]).toEqual([6_000, 300]);
    expect([page.notes, page.fileIsPicture]).toEqual([['firstPageOnly'], false]);
    expect([at(page, 0.5), at(page, 0.1)]).toEqual([RED, CLEAR]);
    expect([at(page, 0.2499)[3], at(page, 0.2502)[3]]).toEqual([0, 255]);
  });

  it('says when its letters are drawn with another font', async () => {
    const lettered: PdfPage = { ...bar, content: 'BT /F1 40 Tf 400 20 Td (Otterbank) Tj ET' };
    const page = await unpackArt(scratch.keep(pdf([lettered])), 'application/pdf');
    expect(page).toMatchObject({ ok: true, notes: ['fontsReplaced'] });
  });

  it('that draws itself in itself without end is refused before it fills the memory', async () => {
    // Twelve forms, each drawn ten times by the one before (ISO 32000-1, 8.10): a million million rectangles.
    const nested = scratch.keep(pdf([{ ...bar, content: '/X0 Do' }], 12));
    expect(await unpackPdf(nested, 64 * 1024 * 1024)).toEqual({ ok: false, reason: 'tooInvolved' });
  });

  it('is refused when it is locked, cut off or none', async () => {
    // Made by Ghostscript with a user's password.
    expect(await unpackArt('tests/data/formats/locked.pdf', 'application/pdf')).toEqual({
      ok: false,
      reason: 'pdfLocked',
    });
    expect(await unpackArt(scratch.keep('%PDF-1.7\nnothing'), 'application/pdf')).toEqual({
      ok: false,
      reason: 'damaged',
    });
    const whole = pdf([bar]);
    expect(await unpackArt(scratch.keep(whole.subarray(0, 120)), 'application/pdf')).toEqual({
      ok: false,
      reason: 'damaged',
    });
  });
});

/** Headers of two PNGs of 10 000 × 5 000 px, which no renderer should begin to unpack. */
function hugePictures(): string {
  const header = Buffer.from(readFileSync('tests/data/png/basn2c08.png'));
  header.writeUInt32BE(10_000, 16);
  header.writeUInt32BE(5_000, 20);
  return `<image width="9" height="9" href="data:image/png;base64,${header.toString('base64')}"/>`.repeat(2);
}
