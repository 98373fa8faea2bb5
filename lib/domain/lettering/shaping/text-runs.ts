import { bidiLevels } from './bidi-levels';
import { graphemes } from './graphemes';
import { scriptOf, UNKNOWN_SCRIPT } from './script-of';
import type { TextRun } from './shaping-font';

/** A run with the level that says where it stands on the line. */
export type LevelledRun = TextRun & { readonly level: number };

/**
 * A line cut where its direction or its script changes, in the order it is written. What belongs to no script goes with the
 * letters before it, or after it at the beginning.
 */
export function textRuns(text: string): LevelledRun[] {
  const levels = bidiLevels(text);
  const runs: LevelledRun[] = [];
  let at = 0;
  for (const letter of graphemes(text)) {
    const start = at;
    at += letter.length;
    const level = levels[start] ?? 0;
    const script = scriptOfLetter(letter);
    const last = runs.at(-1);
    if (last && last.level === level && goTogether(last.script, script)) {
      runs[runs.length - 1] = { ...last, end: at, script: last.script ?? script };
    } else {
      runs.push({ text, start, end: at, level, rightToLeft: level % 2 === 1, script });
    }
  }
  return runs.map((run) => ({ ...run, script: run.script === UNKNOWN_SCRIPT ? null : run.script }));
}

function goTogether(one: string | null, other: string | null): boolean {
  return one === other || one === null || other === null;
}

/** The script of a letter's base; an accent has none of its own. */
function scriptOfLetter(letter: string): string | null {
  for (const character of letter) {
    const script = scriptOf(character);
    if (script) return script;
  }
  return null;
}
