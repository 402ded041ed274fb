import { useMemo, useRef } from 'preact/hooks';
import { plus, type Point } from '../../core/space';
import type { Thing } from '../../core/things';
import { nearestView, type View } from '../../core/view';
import type { Grip } from '../dragging';
import type { SpaceHand } from './SpaceView';
import type { Stage } from './Stage';

interface HandProps {
    things: readonly Thing[];
    /** The thing that is chosen: it is what is dragged, and where the keys go on from. */
    current: string | undefined;
    movable: (thing: string) => boolean;
    grip: Grip;
    onChoose: (thing: Thing) => void;
    onEnter: (thing: Thing) => void;
}

/** Where a hand took hold: the plane that it moves in, and how far off the middle it has it. */
interface Hold {
    view: View;
    at: Point;
    met: Point;
}

/**
 * Drags the chosen part in the plane that the view shows best; by keys after M. Page Up and Page
 * Down go from thing to thing.
 */
export function useSpaceHand(props: HandProps): SpaceHand {
    const now = useRef(props);
    now.current = props;
    return useMemo<SpaceHand>(() => {
        let hold: Hold | undefined;
        const chosen = (): Thing | undefined =>
            now.current.things.find(thing => thing.id === now.current.current);
        const walk = (by: 1 | -1): void => {
            const { things, current, onChoose } = now.current;
            const at = things.findIndex(thing => thing.id === current);
            const next = at < 0 ? (by > 0 ? 0 : things.length - 1) : at + by;
            const to = things[(next + things.length) % things.length];
            if (to) onChoose(to);
        };
        const byKeys = (stage: Stage, event: KeyboardEvent, held: string): boolean => {
            const { grip } = now.current;
            switch (event.key) {
                case 'Enter':
                    grip.drop();
                    return true;
                case 'Escape':
                    grip.cancel();
                    return true;
                default:
                    return (
                        grip.holds(held) === 'keys' &&
                        grip.step(
                            nearestView(stage.outlook()),
                            event.key,
                            event.shiftKey ? 10 : 1,
                            event.altKey,
                        )
                    );
            }
        };
        return {
            take(stage, x, y) {
                const thing = stage.pick(x, y);
                const { current, movable, grip } = now.current;
                if (!thing || thing.id !== current || !movable(thing.id)) return false;
                const view = nearestView(stage.outlook());
                const met = stage.onPlane(x, y, thing.from, view.near);
                if (!met || !grip.take(thing.id, 'pointer')) return false;
                hold = { view, at: thing.from, met };
                return true;
            },
            pull(stage, x, y, free) {
                const to = hold && stage.onPlane(x, y, hold.at, hold.view.near);
                if (hold && to) {
                    const way = plus(hold.at, plus(to, hold.met, -1));
                    now.current.grip.carry(hold.view, way, free);
                }
            },
            drop() {
                hold = undefined;
                now.current.grip.drop();
            },
            cancel() {
                hold = undefined;
                now.current.grip.cancel();
            },
            key(stage, event) {
                const thing = chosen();
                const { grip, movable, onEnter } = now.current;
                if (thing && grip.holds(thing.id)) {
                    return byKeys(stage, event, thing.id);
                }
                switch (event.key) {
                    case 'PageDown':
                        walk(1);
                        return true;
                    case 'PageUp':
                        walk(-1);
                        return true;
                    case 'm':
                    case 'M':
                        return (
                            !event.altKey &&
                            thing !== undefined &&
                            movable(thing.id) &&
                            grip.take(thing.id, 'keys')
                        );
                    case 'Enter':
                        if (thing) onEnter(thing);
                        return thing !== undefined;
                    default:
                        return false;
                }
            },
        };
    }, []);
}
