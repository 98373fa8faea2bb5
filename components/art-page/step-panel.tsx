import { useTranslations } from 'use-intl';
import type { MendStep } from '@/lib/domain/art/mend/recipe';
import { Button } from '../ui/button';
import { AmountFields } from './amount-fields';
import { BoxFields } from './box-fields';
import { EraseFields } from './erase-fields';
import type { ShownPicture } from './fetch-preview';
import { KnockOutFields } from './knock-out-fields';
import { isWholeStep } from './mend-bench';
import { RedrawFields } from './redraw-fields';
import fields from './step-fields.module.css';
import styles from './step-panel.module.css';

type StepPanelProps = {
  step: MendStep;
  /** The picture the step is given. */
  picture: ShownPicture;
  pxPerInch: number;
  offered: readonly string[];
  /** Why the step cannot be done, in one sentence; null where it can. */
  refusal: string | null;
  boxInHand: number;
  onBoxInHand: (index: number) => void;
  onStep: (change: (step: MendStep) => MendStep) => void;
  onTake: () => void;
  onLeave: () => void;
};

/** The mend being tried: its amounts, and whether to take it. */
export function StepPanel(props: StepPanelProps) {
  const { step, refusal, onTake, onLeave } = props;
  const t = useTranslations('art-page.panel');
  const mends = useTranslations('art-findings.mend');
  const canTake = isWholeStep(step) && refusal === null;
  return (
    <section aria-labelledby="in-hand-title" className={styles.panel}>
      <h2 id="in-hand-title" tabIndex={-1} className={styles.title}>
        {mends(step.mend)}
      </h2>
      <StepFields {...props} />
      {refusal ? (
        <p role="alert" className={styles.refusal}>
          {refusal}
        </p>
      ) : null}
      <div className={styles.ends}>
        <Button kind="primary" aria-disabled={!canTake} onClick={() => canTake && onTake()}>
          {t(`take.${step.mend}`)}
        </Button>
        <Button onClick={onLeave}>{t('leave')}</Button>
      </div>
    </section>
  );
}

function StepFields({ step, picture, pxPerInch, offered, boxInHand, onBoxInHand, onStep }: StepPanelProps) {
  const t = useTranslations('art-page');
  const { facts } = picture;
  const put = (to: MendStep) => onStep(() => to);
  switch (step.mend) {
    case 'crop':
      return (
        <div className={fields.fields}>
          <p className={fields.hint}>{t('crop.how')}</p>
          <BoxFields legend={t('crop.box')} box={step.box} picture={facts} onChange={(box) => put({ ...step, box })} />
        </div>
      );
    case 'erase':
      return (
        <EraseFields
          step={step}
          picture={facts}
          found={facts.junk}
          inHand={boxInHand}
          onInHand={onBoxInHand}
          onStep={put}
        />
      );
    case 'knockOut':
      return <KnockOutFields step={step} picture={picture} onStep={onStep} />;
    case 'redraw':
      return <RedrawFields step={step} facts={facts} onStep={put} />;
    default:
      return <AmountFields step={step} pxPerInch={pxPerInch} offered={offered} onStep={put} />;
  }
}
