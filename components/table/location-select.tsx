import { useId } from 'react';
import { useTranslations } from 'use-intl';
import type { Location, LocationId } from '@/lib/domain/layout/locations';
import styles from './slips.module.css';

type LocationSelectProps = {
  label: string;
  value: LocationId;
  offered: readonly Location[];
  locked?: boolean;
  onChoose: (locationId: LocationId) => void;
};

/** The named spots a print can go to, by the side they are on. */
export function LocationSelect({ label, value, offered, locked, onChoose }: LocationSelectProps) {
  const id = useId();
  const t = useTranslations('readings');
  const sides = [...new Set(offered.map(({ side }) => side))];
  return (
    <div className={styles.field}>
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        value={value}
        disabled={locked}
        onChange={({ currentTarget }) => {
          const chosen = offered.find((location) => location.id === currentTarget.value);
          if (chosen) onChoose(chosen.id);
        }}
      >
        {sides.map((side) => (
          <optgroup key={side} label={t(`side.${side}`)}>
            {offered
              .filter((location) => location.side === side)
              .map((location) => (
                <option key={location.id} value={location.id}>
                  {t(`location.${location.id}`)}
                </option>
              ))}
          </optgroup>
        ))}
      </select>
    </div>
  );
}
