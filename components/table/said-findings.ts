import type { FlatLineName } from '@/lib/domain/garment/flat';
import type { SizeKey } from '@/lib/domain/layout/document';
import type { FitFinding, FitKind } from '@/lib/domain/layout/fit';
import { isStopping, type SizeFit } from '@/lib/domain/layout/layout-fit';
import { keyOf } from '@/lib/domain/layout/sizes';
import type { Micrometres } from '@/lib/domain/measure/length';

/** One thing to say of all the sizes it holds for, with the least and the most of its distances. */
export type SaidFinding = {
  readonly kind: FitKind;
  readonly line: FlatLineName | null;
  readonly sizes: readonly SizeKey[];
  readonly leastUm: Micrometres;
  readonly mostUm: Micrometres;
};

/**
 * What to say of how a print fits: what stops a revision first. A size on which something cannot be pressed is told the
 * first such thing only, since what else is wrong there follows from it.
 */
export function saidFindings(fits: readonly SizeFit[]): SaidFinding[] {
  const said = new Map<string, SaidFinding>();
  for (const { offered, findings } of fits) {
    for (const { kind, line, um } of worthSaying(findings)) {
      const key = `${kind} ${line}`;
      const known = said.get(key) ?? { kind, line, sizes: [], leastUm: um, mostUm: um };
      said.set(key, {
        ...known,
        sizes: [...known.sizes, keyOf(offered)],
        leastUm: Math.min(known.leastUm, um),
        mostUm: Math.max(known.mostUm, um),
      });
    }
  }
  return [...said.values()].sort((a, b) => Number(isStopping(b)) - Number(isStopping(a)));
}

function worthSaying(findings: readonly FitFinding[]): readonly FitFinding[] {
  const stops = findings.find(isStopping);
  return stops ? [stops] : findings;
}
