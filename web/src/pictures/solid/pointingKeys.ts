import { beside } from '../../core/things';
import type { Pointing } from './usePointing';

/** Keys of every picture in space, in words. */
export const SPACE_KEYS =
    'Arrow keys turn it, plus and minus come nearer and go away, 1 to 6 are the fixed views, Page Up ' +
    'and Page Down go from thing to thing, D measures from the chosen thing to those that are chosen ' +
    'next, Escape measures no more';

/** Page Up and Page Down go from thing to thing, D measures from the chosen one; false for any other key. */
export function pointedByKey(pointing: Pointing, event: KeyboardEvent): boolean {
    const walk = (by: 1 | -1): true => {
        const to = beside(pointing.things, pointing.current, by);
        if (to) pointing.walk(to);
        return true;
    };
    switch (event.key) {
        case 'PageDown':
            return walk(1);
        case 'PageUp':
            return walk(-1);
        case 'd':
        case 'D':
            if (event.altKey || !pointing.thing) return false;
            pointing.measureFromHere();
            return true;
        case 'Escape':
            if (!pointing.measuring) return false;
            pointing.measure(false);
            return true;
        default:
            return false;
    }
}
