'use client';

import { useTranslations } from 'use-intl';
import { AGE_BANDS, type AgeBand } from '@/lib/domain/garment/kinds';
import { CheckField } from '../ui/check-field';
import { FieldGroup } from '../ui/field-group';
import { TextField } from '../ui/text-field';
import styles from './blank-forms.module.css';

type WordFieldsProps = {
  typed: Readonly<Record<string, string>>;
  mistakeOf: (field: string) => string | undefined;
};

/** What a blank is called and which cloth it is of. */
export function NameAndFabric({ typed, mistakeOf }: WordFieldsProps) {
  const t = useTranslations('blanks.facts');
  return (
    <div className={styles.pair}>
      <TextField
        name="name"
        label={t('name')}
        hint={t('nameHint')}
        error={mistakeOf('name')}
        defaultValue={typed.name}
        maxLength={80}
        autoComplete="off"
        required
      />
      <TextField
        name="fabric"
        label={t('fabric')}
        hint={t('fabricHint')}
        error={mistakeOf('fabric')}
        defaultValue={typed.fabric}
        maxLength={80}
        autoComplete="off"
      />
    </div>
  );
}

/** Whom it is cut for. */
export function BandChoice({ chosen, onChoose }: { chosen: string | undefined; onChoose?: (band: AgeBand) => void }) {
  const t = useTranslations('blanks.facts');
  return (
    <FieldGroup inline id="ageBand" label={t('ageBand')}>
      <div className={styles.ticks}>
        {AGE_BANDS.map((band) => (
          <CheckField
            key={band}
            type="radio"
            name="ageBand"
            value={band}
            label={t(`band.${band}`)}
            defaultChecked={chosen === band}
            onChange={() => onChoose?.(band)}
          />
        ))}
      </div>
    </FieldGroup>
  );
}
