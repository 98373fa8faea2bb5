import type { FormState } from '../ui/form-state';

/**
 * Which state of the blank a form was filled in over. After somebody else's change was told, it is the state they were
 * told of, so that sending again is meant.
 */
export function SeenField({ seen, state }: { seen: string; state: FormState }) {
  const told = state.refusal === 'changedElsewhere' ? state.detail?.seen : undefined;
  return <input type="hidden" name="seen" value={String(told ?? seen)} />;
}
