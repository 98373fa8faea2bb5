import type { TypeSampleProps } from '@/components/fonts/type-sample';
import type { FontRef } from '@/lib/domain/lettering/lettering';
import type { OutlineStep, SetLine, TypeEngine } from '@/lib/domain/lettering/type-engine';

/** Room above capitals and below the line they stand on, thousandths of the letter height: for accents and tails. */
const ABOVE = 1_300;
const BELOW = 450;

/** A text set in a font, for the page to draw: rounded to a thousandth of the letter height. */
export function sampleOf(engine: TypeEngine, font: FontRef, text: string, title: string): TypeSampleProps {
  const line = engine.outlineLine(text, font);
  const left = Math.min(0, Math.floor(line.inkBox?.minX ?? 0));
  const right = Math.ceil(Math.max(line.advance, line.inkBox?.maxX ?? 0, 1));
  return { d: lineData(line), viewBox: `${left} ${-ABOVE} ${right - left} ${ABOVE + BELOW}`, title };
}

function lineData({ letters }: SetLine): string {
  return letters.flatMap(({ outline, x }) => outline.map((step) => stepData(step, x))).join('');
}

function stepData({ type, values }: OutlineStep, x: number): string {
  return `${type}${values.map((value, index) => Math.round(index % 2 === 0 ? value + x : value)).join(' ')}`;
}
