import { useMemo, useRef } from 'preact/hooks';
import { plus, type Point } from '../../core/space';
import { nearestView, type View } from '../../core/view';
import type { Grip } from '../dragging';
import { pointedByKey } from './pointingKeys';
import type { SpaceHand } from './SpaceView';
import type { Stage } from './Stage';
import type { Pointing } from './usePointing';

interface HandProps {
    /** Its chosen thing is what is dragged, and where the keys go on from. */
    pointing: Pointing;
    movable: (thing: string) => boolean;
    grip: Grip;
}

/** Where a hand took hold: the plane that it moves in, and how far off the middle it has it. */
interface Hold {
    view: View;
    at: Point;
    met: Point;
}

/**
 * Drags the chosen part in the plane that the view shows best; by keys after M. While nothing is
 * held, keys point and measure.
 */
export function useSpaceHand(props: HandProps): SpaceHand {
    const now = useRef(props);
    now.current = props;
    return useMemo<SpaceHand>(() => {
        let hold: Hold | undefined;
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
                const { pointing, movable, grip } = now.current;
                if (!thing || thing.id !== pointing.current || !movable(thing.id)) return false;
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
                const { pointing, grip, movable } = now.current;
                const { thing } = pointing;
                if (thing && grip.holds(thing.id)) {
                    return byKeys(stage, event, thing.id);
                }
                switch (event.key) {
                    case 'm':
                    case 'M':
                        return (
                            !event.altKey &&
                            thing !== undefined &&
                            movable(thing.id) &&
                            grip.take(thing.id, 'keys')
                        );
                    case 'Enter':
                        if (thing) pointing.choose(thing);
                        return thing !== undefined;
                    default:
                        return pointedByKey(pointing, event);
                }
            },
        };
    }, []);
}
