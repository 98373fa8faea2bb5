import { useEffect, useState } from 'react';
import type { FontRef } from '@/lib/domain/lettering/lettering';
import type { NamedFont } from '@/lib/domain/lettering/shaping/outline-line';
import { openShapingFont, type ShapingFont } from '@/lib/domain/lettering/shaping/shaping-font';
import { typeEngineOver } from '@/lib/domain/lettering/shaping/type-engine-over';
import type { TypeEngine } from '@/lib/domain/lettering/type-engine';

export type TypeSetter = {
  /** Sets type in the fonts asked for; while more are on their way, in those there before. Null until the first are there. */
  readonly engine: TypeEngine | null;
  /** Whether a font could not be fetched or opened. `retry` tries again. */
  readonly failed: boolean;
  readonly retry: () => void;
};

const open = new Map<string, Promise<ShapingFont>>();

/**
 * What sets type on the layout table: the same shaping as on the server, over the same font files. Nothing is fetched as
 * long as no font is asked for.
 */
export function useTypeSetter(fonts: readonly FontRef[], behind: readonly FontRef[]): TypeSetter {
  const [engine, setEngine] = useState<TypeEngine | null>(null);
  const [failed, setFailed] = useState(false);
  const [tries, setTries] = useState(0);
  const asked = fonts.length === 0 ? '' : JSON.stringify([fonts, behind, tries]);

  // biome-ignore lint/correctness/useExhaustiveDependencies: `asked` stands for the fonts, whose lists are new at every render.
  useEffect(() => {
    if (asked === '') return;
    let wanted = true;
    Promise.all([Promise.all(fonts.map(openNamed)), Promise.all(behind.map(openNamed))]).then(
      ([chosen, standing]) => {
        if (!wanted) return;
        setEngine(typeEngineOver(chosen, standing));
        setFailed(false);
      },
      () => {
        if (wanted) setFailed(true);
      },
    );
    return () => {
      wanted = false;
    };
  }, [asked]);

  return { engine, failed, retry: () => setTries((count) => count + 1) };
}

async function openNamed(ref: FontRef): Promise<NamedFont> {
  const opening = open.get(ref.sha256) ?? fetchFont(ref.sha256);
  open.set(ref.sha256, opening);
  try {
    return { ...(await opening), ref };
  } catch (error) {
    open.delete(ref.sha256);
    throw error;
  }
}

async function fetchFont(sha256: string): Promise<ShapingFont> {
  const [harfbuzz, answer] = await Promise.all([import('harfbuzzjs'), fetch(`/api/fonts/${sha256}`)]);
  if (!answer.ok) throw new Error(`The font ${sha256} was answered with ${answer.status}.`);
  return openShapingFont(harfbuzz, new Uint8Array(await answer.arrayBuffer()));
}
