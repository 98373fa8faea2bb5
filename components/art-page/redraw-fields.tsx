import { useTranslations } from 'use-intl';
import type { ArtFacts } from '@/lib/domain/art/art-facts';
import type { MendStep } from '@/lib/domain/art/mend/recipe';
import { Button } from '../ui/button';
import { ColourField } from './colour-field';
import { RangeField } from './range-field';
import styles from './step-fields.module.css';

export type RedrawStep = Extract<MendStep, { mend: 'redraw' }>;

type RedrawFieldsProps = { step: RedrawStep; facts: ArtFacts; onStep: (step: RedrawStep) => void };

const MOST_COLOURS = 12;

/** The flat colours the picture is drawn anew with: left out ones are merged into those nearest to them. */
export function RedrawFields({ step, facts, onStep }: RedrawFieldsProps) {
  const t = useTranslations('art-page.redraw');
  const { colours, scale } = step;
  const others = facts.colours
    .map(({ hex }) => hex)
    .filter((hex) => !colours.some((each) => each.toLowerCase() === hex.toLowerCase()));
  const [next] = others;
  return (
    <div className={styles.fields}>
      <p className={styles.hint}>{t('how')}</p>
      <fieldset>
        <legend className={styles.legend}>{t('colours', { count: colours.length })}</legend>
        <ol className={styles.colours}>
          {colours.map((hex, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a colour being changed keeps its place
            <li key={index}>
              <ColourField
                name={`colour-${index + 1}`}
                label={t('colour', { number: index + 1 })}
                hex={hex}
                offered={[]}
                isOneOfMany
                onHex={(to) =>
                  onStep({ ...step, colours: colours.map((each, place) => (place === index ? to : each)) })
                }
              />
              {colours.length > 1 ? (
                <Button
                  kind="quiet"
                  aria-label={t('mergeOf', { number: index + 1 })}
                  onClick={() => onStep({ ...step, colours: colours.filter((_, place) => place !== index) })}
                >
                  {t('merge')}
                </Button>
              ) : null}
            </li>
          ))}
        </ol>
        {colours.length < MOST_COLOURS ? (
          <Button kind="quiet" onClick={() => onStep({ ...step, colours: [...colours, next ?? '#24222B'] })}>
            {t('add')}
          </Button>
        ) : null}
      </fieldset>
      <RangeField
        name="scale"
        label={t('scale')}
        reading={t('times', { scale, width: facts.widthPx * scale, height: facts.heightPx * scale })}
        value={scale}
        min={1}
        max={8}
        onValue={(to) => onStep({ ...step, scale: to })}
      />
    </div>
  );
}
