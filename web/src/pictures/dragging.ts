import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { Latest } from '../core/latest';
import { placeOf, type Scene } from '../core/scene';
import { snapped, stepped, twinPlace } from '../core/snap';
import { length, minus, point, type Point } from '../core/space';
import { moved, type Laid, type View } from '../core/view';
import type { Moved, Part } from '../core/wire';
import type { Drag } from './api';

/** A fine step by key over a plain one: 1 mm of 5. */
const FINE = 0.2;

/** A part on its way. */
export interface Ghost {
    part: string;
    from: Point;
    /** Where the hand has it. */
    to: Point;
    /** Where it is thought to come to stand: on whole steps, until the server has said. */
    stand: Point;
    twin: string | undefined;
    twinFrom: Point | undefined;
    twinTo: Point | undefined;
    by: 'pointer' | 'keys';
}

export interface Wanted {
    stepM: number;
    snap: boolean;
    twin: boolean;
    whole?: boolean;
}

/** What takes, moves and lets go. */
export interface Grip {
    /** How a part is held, if it is this one. */
    holds(part: string): Ghost['by'] | undefined;
    /** Takes a part; the way of the pointer since then goes to `pull`. */
    take(part: string, by: Ghost['by']): boolean;
    /** By a way on a view, in its units. */
    pull(laid: Laid, dx: number, dy: number, free: boolean): void;
    /** To a place; a view says which of its coordinates the hand moves. */
    carry(view: View, to: Point, free: boolean): void;
    /** By an arrow key, as the view has it; false for any other. */
    step(view: View, key: string, times: number, free: boolean): boolean;
    drop(): void;
    cancel(): void;
}

function sendable(ghost: Ghost, phase: Drag['phase'], snap: boolean, whole = false): Drag {
    const { forward, right, up } = ghost.to;
    return {
        part: ghost.part,
        to: { forwardM: forward, rightM: right, upM: up },
        phase,
        snap,
        twin: ghost.twin !== undefined,
        ...(whole ? { whole } : {}),
    };
}

/** The one drag of a drawn rig, by pointer or keys: where its ghost is, and who is told. */
export function useHand(
    scene: Scene,
    parts: readonly Part[],
    wanted: Wanted,
    onDrag: (drag: Drag) => void | Promise<void>,
): { ghost: Ghost | undefined; grip: Grip } {
    const [ghost, setGhost] = useState<Ghost>();
    const now = useRef({ scene, parts, wanted, onDrag });
    now.current = { scene, parts, wanted, onDrag };

    const grip = useMemo<Grip>(() => {
        let held: Ghost | undefined;
        let told = false;
        let snapping = false;
        const latest = new Latest<Drag>(drag => now.current.onDrag(drag));
        const show = (next: Ghost | undefined): void => {
            held = next;
            setGhost(next);
        };
        const go = (to: Point, stand: Point, snap: boolean): void => {
            if (!held) {
                return;
            }
            const { from, twinFrom } = held;
            const twinTo = twinFrom && twinPlace(twinFrom, from, stand);
            show({ ...held, to, stand, twinTo });
            told = true;
            snapping = snap;
            latest.offer(sendable(held, 'moving', snap, now.current.wanted.whole));
        };
        const end = (phase: 'over' | 'off'): void => {
            const last = held;
            held = undefined;
            latest.drop();
            if (!last || !told) {
                setGhost(undefined);
                return;
            }
            const done = now.current.onDrag(
                sendable(last, phase, snapping, now.current.wanted.whole),
            );
            const clear = (): void => {
                setGhost(shown => (shown === last ? undefined : shown));
            };
            if (phase === 'over' && done instanceof Promise) {
                done.then(clear, clear); // the ghost stays until the rig is drawn anew
            } else {
                clear();
            }
        };
        const grip: Grip = {
            holds(part: string): Ghost['by'] | undefined {
                return held?.part === part ? held.by : undefined;
            },
            take(part: string, by: Ghost['by']): boolean {
                const from = placeOf(now.current.scene, part);
                const known = now.current.parts.find(other => other.id === part);
                if (!from || !known?.movable) {
                    return false;
                }
                const twin = now.current.wanted.twin ? known.twin : undefined;
                const twinFrom = twin === undefined ? undefined : placeOf(now.current.scene, twin);
                told = false;
                show({ part, from, to: from, stand: from, twin, twinFrom, twinTo: twinFrom, by });
                return true;
            },
            pull(laid: Laid, dx: number, dy: number, free: boolean): void {
                if (held) {
                    grip.carry(laid.view, moved(laid, held.from, dx, dy), free);
                }
            },
            carry(view: View, to: Point, free: boolean): void {
                if (held) {
                    const { wanted } = now.current;
                    const snap = wanted.snap !== free;
                    go(to, snap ? snapped(to, held.from, view, wanted.stepM) : to, snap);
                }
            },
            step(view: View, key: string, times: number, free: boolean): boolean {
                const { stepM } = now.current.wanted;
                const step = free ? FINE * stepM : stepM * times;
                const to = held && stepped(held.to, key, view, step);
                if (to) {
                    go(to, to, false); // a step that snapping took back would be none
                }
                return to !== undefined;
            },
            drop(): void {
                const unmoved = held && held.to === held.from;
                end(unmoved ? 'off' : 'over');
            },
            cancel(): void {
                end('off');
            },
        };
        return grip;
    }, []);
    useEffect(
        () => () => {
            grip.cancel();
        },
        [grip],
    );
    return { ghost, grip };
}

/** Steps that read well in the file: 5 mm, a quarter of an inch. */
export const STEP_M = { si: 0.005, us: 0.00635 };

/** Near enough to be the answer to where the hand is now: one in line with others, m. */
const SAID_M = 0.012;

/** Where the server says that a part comes to stand, once it has said so of about this place. */
export function settled(ghost: Ghost | undefined, moved: Moved | undefined): Ghost | undefined {
    if (!ghost || !moved) {
        return ghost;
    }
    const { forwardM, rightM, upM } = moved.place;
    const stand = point(forwardM, rightM, upM);
    return length(minus(stand, ghost.to)) < SAID_M ? { ...ghost, stand } : ghost;
}
