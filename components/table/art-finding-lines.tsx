import Link from 'next/link';
import { useMemo } from 'react';
import { useTranslations } from 'use-intl';
import type { ArtFinding, Severity } from '@/lib/domain/art/findings/art-finding';
import { artFindings } from '@/lib/domain/art/findings/art-findings';
import { passingWidthUm } from '@/lib/domain/art/findings/passing-width';
import { realInkWidthPx } from '@/lib/domain/art/findings/real-detail';
import { sharpnessAt } from '@/lib/domain/art/sharpness';
import { clothsUnder } from '@/lib/domain/layout/cloths-under';
import { formatLength } from '@/lib/domain/measure/format-length';
import type { ChosenPrint } from '@/lib/editor/chosen-print';
import { goAheadSoft } from '@/lib/editor/commands/go-ahead-soft';
import { setWidth } from '@/lib/editor/commands/size-print';
import { afterCommand, type TableEditor } from '@/lib/editor/table-editor';
import { artFindingWords } from '@/lib/messages/art-finding-words';
import { Button } from '../ui/button';
import { classNames } from '../ui/class-names';
import { useArtChecks } from './art-checks';
import styles from './art-finding-lines.module.css';
import { SharpnessLine } from './sharpness-line';
import type { Change } from './use-reading';

type ArtFindingLinesProps = {
  chosen: ChosenPrint;
  editor: TableEditor;
  change: Change;
  /** Nothing can be changed: signed off, or pinned. */
  locked: boolean;
};

const MARKS: Readonly<Record<Severity, string>> = { stops: '■', warns: '△', notes: '·' };

/** What will go wrong with the picture of the print in hand at its size, each in one line with its mend. */
export function ArtFindingLines({ chosen, editor, change, locked }: ArtFindingLinesProps) {
  const t = useTranslations('table.art');
  const { checkOf, pageOf } = useArtChecks();
  const { print, group } = chosen;
  const art = print.content.kind === 'art' ? print.content.art : null;
  const { garments } = editor.history.present;
  const check = art && checkOf(art.sha256);
  const findings = useMemo(() => {
    if (!check?.facts) return [];
    const at = { widthUm: group.widthUm, cloths: clothsUnder(print, garments) };
    return artFindings(check.facts, check.notes, at).filter(isSaidHere);
  }, [check, group.widthUm, print, garments]);
  if (!(art && check)) return null;
  const realWidthPx = realInkWidthPx({ inkWidthPx: art.inkBox.width, facts: check.facts });
  const isSoft = sharpnessAt(realWidthPx, group.widthUm) === 'soft';
  return (
    <div className={styles.lines}>
      <SharpnessLine widthUm={group.widthUm} inkWidthPx={realWidthPx} unit={editor.unit} />
      {findings.length > 0 ? (
        <ul className={styles.findings} aria-label={t('title')}>
          {findings.map((finding) => (
            <li key={finding.code}>
              <FindingLine {...{ finding, chosen, editor, change, locked }} page={pageOf(art.artId)} />
            </li>
          ))}
        </ul>
      ) : null}
      {isSoft || print.goAheadSoft ? <GoAhead {...{ chosen, change, locked }} /> : null}
      <Link className={styles.page} href={pageOf(art.artId)} prefetch={false}>
        {t('page')}
      </Link>
    </div>
  );
}

type FindingLineProps = ArtFindingLinesProps & { finding: ArtFinding; page: string };

function FindingLine({ finding, chosen, editor, change, locked, page }: FindingLineProps) {
  const t = useTranslations('table.art');
  const words = useTranslations('art-findings');
  const { unit } = editor;
  const { widthUm } = chosen.group;
  const said = artFindingWords(words, finding, { widthUm, unit });
  const severity = finding.severity === 'stops' && chosen.print.goAheadSoft ? 'warns' : finding.severity;
  const [mend] = finding.mends;
  const passes = finding.passesAtWidthUm === null ? null : passingWidthUm(finding, unit);
  return (
    <>
      <p title={said.maker}>
        <span aria-hidden="true" className={classNames(styles.sign, styles[severity])}>
          {MARKS[severity]}{' '}
        </span>
        <b className={styles[severity]}>{said.title}</b>
        {said.number ? `: ${said.number}` : null}
        <span className="visually-hidden">. {said.maker}</span>
      </p>
      {locked ? null : (
        <p className={styles.mends}>
          {passes === null ? null : (
            <Button
              kind="secondary"
              onClick={() => change((before) => afterCommand(before, setWidth, { widthUm: passes }))}
            >
              {t('use', { width: formatLength(passes, unit) })}
            </Button>
          )}
          {mend ? (
            <Link href={`${page}#${finding.code}`} prefetch={false}>
              {words(`mend.${mend}`)}
            </Link>
          ) : null}
        </p>
      )}
    </>
  );
}

/** Goes ahead with a soft print, in words that say what the customer is asked for then. */
function GoAhead({ chosen, change, locked }: Omit<ArtFindingLinesProps, 'editor'>) {
  const t = useTranslations('table.art');
  const on = chosen.print.goAheadSoft === true;
  return (
    <label className={styles.goAhead}>
      <input
        type="checkbox"
        checked={on}
        disabled={locked}
        onChange={({ currentTarget }) => {
          const { checked } = currentTarget;
          change((before) => afterCommand(before, goAheadSoft, { on: checked }));
        }}
      />
      <span>
        {t('goAhead')} <small>{t('goAheadText')}</small>
      </span>
    </label>
  );
}

/**
 * What is good to know stands on the picture's own page; the line about sharpness says what is fair, and the lines about the
 * fit say what the press takes.
 */
function isSaidHere({ code, severity, numbers }: ArtFinding): boolean {
  if (code === 'tooLarge') return 'than' in numbers && numbers.than === 'sheet';
  return severity !== 'notes' || code === 'enlarged';
}
