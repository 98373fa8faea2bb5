/** Angles are whole hundredths of a degree, clockwise as seen; names that hold one end in `Centideg`. */
export type Centidegrees = number;

/** Hundredths of a degree in a whole turn. */
export const FULL_TURN_CENTIDEG = 36_000;

/** Hundredths of a degree as radians, for trigonometry. */
export function radiansFromCentideg(turn: Centidegrees): number {
  return (turn / FULL_TURN_CENTIDEG) * 2 * Math.PI;
}

/** The same turn in the range (-180°, 180°]. */
export function normaliseTurn(turn: Centidegrees): Centidegrees {
  const within = ((turn % FULL_TURN_CENTIDEG) + FULL_TURN_CENTIDEG) % FULL_TURN_CENTIDEG;
  return within > FULL_TURN_CENTIDEG / 2 ? within - FULL_TURN_CENTIDEG : within;
}
