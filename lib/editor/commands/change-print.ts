import { LOCATIONS, type LocationId } from '@/lib/domain/layout/locations';
import { startingGroups, startingInk } from '@/lib/domain/layout/starting-groups';
import { type Centidegrees, normaliseTurn } from '@/lib/domain/measure/angle';
import { canEditPrint, canMovePrint, printInHand, withPrint } from '../chosen-print';
import type { Command } from '../command';
import { printName } from '../print-name';

/** Takes the print off the garment. */
export const removePrint: Command<void> = {
  id: 'removePrint',
  keys: ['Delete', 'Backspace'],
  canRun: canEditPrint,
  run: (state) => {
    const { print } = printInHand(state);
    return { ...state.layout, prints: state.layout.prints.filter(({ printId }) => printId !== print.printId) };
  },
};

/** Turns the print about its ink, clockwise as seen; its readings stay, taken to the turned ink. */
export const setTurn: Command<{ readonly turnCentideg: Centidegrees }> = {
  id: 'setTurn',
  keys: [],
  canRun: canMovePrint,
  run: (state, { turnCentideg }) => {
    const turn = Number.isFinite(turnCentideg) ? normaliseTurn(Math.round(turnCentideg)) + 0 : 0;
    return withPrint(state.layout, printInHand(state).print.printId, (print) =>
      print.turnCentideg === turn ? print : { ...print, turnCentideg: turn },
    );
  },
};

/** Moves the print to another location, with that location's starting values; where it does not suit, nothing changes. */
export const setLocation: Command<{ readonly locationId: LocationId; readonly newId: () => string }> = {
  id: 'setLocation',
  keys: [],
  canRun: canMovePrint,
  run: (state, { locationId, newId }) => {
    const { print } = printInHand(state);
    if (print.locationId === locationId) return state.layout;
    const garments = state.layout.garments.filter(({ garmentId }) => print.garmentIds.includes(garmentId));
    const sizeGroups = startingGroups(locationId, garments, startingInk(print.content), newId);
    if (!sizeGroups) return state.layout;
    const { side } = LOCATIONS[locationId];
    return withPrint(state.layout, print.printId, (each) => ({ ...each, side, locationId, sizeGroups }));
  },
};

/** Gives the print another name; one that says nothing leaves it as it was. */
export const renamePrint: Command<{ readonly name: string }> = {
  id: 'renamePrint',
  keys: [],
  canRun: canEditPrint,
  run: (state, { name }) =>
    withPrint(state.layout, printInHand(state).print.printId, (print) => {
      const next = printName(name);
      return next === null || next === print.name ? print : { ...print, name: next };
    }),
};
