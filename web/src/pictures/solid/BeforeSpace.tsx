import { Group } from 'three';
import { useMemo } from 'preact/hooks';
import type { Shift } from '../../core/before';
import { corners, type Scene } from '../../core/scene';
import { across, minus, length, plus, point, type Point } from '../../core/space';
import { HALF_M } from '../../core/things';
import { groupNames, rigExhibit, type Exhibit, type Naming, type Overlay } from './exhibit';
import { NoWebGl } from './NoWebGl';
import { dashes, extentOf, strokes, type Colour } from './shapes';
import { SpaceView, type SpaceHand } from './SpaceView';

/** So many distances stand beside their parts, the chosen one first. */
const NAMED = 8;
const SIDES = 40;

interface BeforeSpaceProps {
    words: string;
    scene: Scene;
    was: Scene;
    shifts: readonly Shift[];
    /** How far, in few words. */
    short: (shift: Shift) => string;
    chosen: string | undefined;
    onChoose: (id: string) => void;
}

/** The rig now in space; what stands elsewhere as an outline where it stood, and the way from there. */
export default function BeforeSpace(props: BeforeSpaceProps) {
    const { words, scene, was, shifts, short, chosen, onChoose } = props;
    const exhibit = useMemo<Exhibit>(() => {
        const now = rigExhibit(scene, { jets: false, lines: false });
        return { ...now, extent: extentOf([...corners(was), ...corners(scene)]), names: [] };
    }, [scene, was]);
    const overlay = useMemo<Overlay>(() => {
        const first = [...shifts].sort((a, b) => Number(b.id === chosen) - Number(a.id === chosen));
        return {
            build: colour => outlines(shifts, chosen, colour),
            names: [
                ...first
                    .slice(0, NAMED)
                    .map((shift): Naming => ({ words: nameOf(shift, short), at: [middle(shift)] })),
                ...groupNames(scene),
            ],
        };
    }, [shifts, chosen, short, scene]);
    const hand = useMemo(() => stepping(shifts, chosen, onChoose), [shifts, chosen, onChoose]);
    return (
        <SpaceView
            words={`${words}. Page Up and Page Down go through what stands elsewhere, arrow keys turn it, 1 to 6 are the fixed views, plus and minus come nearer and go away.`}
            exhibit={exhibit}
            overlay={overlay}
            selected={chosen}
            hand={hand}
            onPick={thing => {
                onChoose(thing.id);
            }}
            instead={<NoWebGl />}
        />
    );
}

function nameOf(shift: Shift, short: (shift: Shift) => string): string {
    return `${shift.id} ${short(shift)}`;
}

function middle({ from, to }: Shift): Point {
    return plus(from, minus(to, from), 0.5);
}

/** Keys from one to the next of what stands elsewhere; the pointer turns and chooses, and drags nothing. */
function stepping(
    shifts: readonly Shift[],
    chosen: string | undefined,
    onChoose: (id: string) => void,
): SpaceHand {
    const nothing = (): void => {
        // two revisions are only looked at
    };
    return {
        take: () => false,
        pull: nothing,
        drop: nothing,
        cancel: nothing,
        key: (_, event) => {
            const step = { PageDown: 1, PageUp: -1 }[event.key];
            if (step === undefined || shifts.length === 0) return false;
            const at = shifts.findIndex(shift => shift.id === chosen);
            const next = at < 0 ? (step > 0 ? 0 : shifts.length - 1) : at + step;
            const to = shifts[(next + shifts.length) % shifts.length];
            if (to) onChoose(to.id);
            return true;
        },
    };
}

function outlines(shifts: readonly Shift[], chosen: string | undefined, colour: Colour): Group {
    const all = new Group();
    for (const shift of shifts) {
        const ink = colour(shift.id === chosen ? '--focus' : '--mark-2');
        const times = shift.id === chosen ? [0.97, 1, 1.03] : [1];
        all.add(strokes(outlineOf(shift, times), ink));
        if (length(minus(shift.to, shift.from)) > 0) {
            all.add(dashes(shift.from, shift.to, ink, 0.015));
        }
    }
    return all;
}

/** The rim of a fan, broken; of anything else the edges of a box. */
function outlineOf({ from, fan }: Shift, times: readonly number[]): Point[] {
    if (fan === undefined) return boxEdges(from, 1.3 * HALF_M.pack);
    const [first, second] = across(fan.push);
    const on = (angle: number, r: number): Point =>
        plus(plus(from, first, r * Math.cos(angle)), second, r * Math.sin(angle));
    return times.flatMap(time =>
        Array.from({ length: SIDES }, (_, k) => k)
            .filter(k => k % 4 !== 3)
            .flatMap(k => [
                on((2 * Math.PI * k) / SIDES, (time * fan.tipM) / 2),
                on((2 * Math.PI * (k + 1)) / SIDES, (time * fan.tipM) / 2),
            ]),
    );
}

function boxEdges(at: Point, half: number): Point[] {
    const ends: Point[] = [];
    const signs = [-1, 1];
    for (const a of signs) {
        for (const b of signs) {
            for (const [f, r, u] of [
                [0, a, b],
                [a, 0, b],
                [a, b, 0],
            ] as const) {
                const along = point(Number(f === 0), Number(r === 0), Number(u === 0));
                const edge = plus(at, point(f, r, u), half);
                ends.push(plus(edge, along, -half), plus(edge, along, half));
            }
        }
    }
    return ends;
}
