import { between, type Axis } from './axis';
import { point, type Point } from './space';
import type {
    AnswerDocument,
    Cases,
    Elevation,
    ElevationShape,
    MatrixLine,
    Standing,
} from './wire';

/** From the one that matters most. */
const WORST_FIRST: readonly Standing[] = ['short', 'cannot be told', 'holds', 'told'];

/** The name of a line, which is the label of its case. */
export function lineName(line: MatrixLine): string {
    return `${line.part}, ${line.what}`;
}

/** The standing of a line is that of the cell that matters most. */
export function worstOf(line: MatrixLine): Standing {
    return (
        WORST_FIRST.find(standing => line.cells.some(cell => cell.standing === standing)) ?? 'told'
    );
}

/** What it is short of and what cannot be told; else its standing. */
export function standingOf(line: MatrixLine, label: (field: string) => string): string {
    const bad = (['short', 'cannot be told'] as const).flatMap(standing => {
        const cells = line.cells.filter(cell => cell.standing === standing);
        return cells.length > 0
            ? [`${standing}: ${cells.map(cell => label(cell.value.field)).join(', ')}`]
            : [];
    });
    return bad.length > 0 ? bad.join('; ') : worstOf(line);
}

/** A part of the rig in one case. */
export interface CaseMark {
    readonly part: string;
    readonly kind: string;
    readonly at: Point;
    readonly lost: boolean;
    /** SI; 0 of what is lost. */
    readonly value: number;
}

export function caseMarks(cases: Cases, at: number): CaseMark[] {
    const one = cases.cases[at];
    return cases.spots.map((spot, k) => ({
        part: spot.part,
        kind: spot.kind,
        at: point(...spot.at),
        lost: one?.lost[k] ?? false,
        value: one?.values[k] ?? 0,
    }));
}

/** Fans that are left, the one that gives most of what it can first; the parts of a rig without fans. */
export function survivors(marks: readonly CaseMark[]): CaseMark[] {
    const fans = marks.filter(mark => mark.kind === 'fan');
    return (fans.length > 0 ? fans : marks)
        .filter(mark => !mark.lost)
        .sort((a, b) => b.value - a.value);
}

/** A side view laid into a picture: `perM` picture units to a metre, y down. */
export interface LaidElevation {
    readonly width: number;
    readonly height: number;
    readonly perM: number;
    /** The left edge of the drawing on the picture, and what is there, m. */
    readonly left: number;
    readonly leftM: number;
    readonly right: number;
    readonly top: number;
    /** Its lower edge on the picture, and how high that is, m. */
    readonly bottom: number;
    readonly lowM: number;
    readonly across: Axis;
    readonly up: Axis;
}

const ROOM = 0.08;
const LEAST_M = 0.5;
const LEFT = 46;
const RIGHT = 10;
const TOP = 14;
const FOOT = 62;

/** Whether a shape keeps people out from all that lies beyond it. */
export function isUpright({ shape, outline }: ElevationShape): boolean {
    return shape === 'keep out' && outline.every(spot => spot[0] === outline[0]?.[0]);
}

/**
 * Around all that is drawn and pulled at. The ground goes through; where nobody may stand is mostly
 * far wider and does not count, unless it is an upright line.
 */
export function layElevation(
    elevation: Elevation,
    fields: AnswerDocument['fields'],
    width: number,
    mostHigh: number,
): LaidElevation {
    const spots = [
        ...elevation.shapes
            .filter(
                each => isUpright(each) || (each.shape !== 'keep out' && each.shape !== 'ground'),
            )
            .flatMap(shape => shape.outline),
        ...elevation.loads.map(load => load.at),
    ];
    const xs = spots.length > 0 ? spots.map(p => p[0]) : [0];
    const ys = [0, ...spots.map(p => p[1])];
    const [lowM, highM] = [Math.min(...ys), Math.max(...ys)];
    const [fromM, toM] = [Math.min(...xs), Math.max(...xs)];
    const room = ROOM * Math.max(LEAST_M, toM - fromM, highM - lowM);
    const wideM = Math.max(LEAST_M, toM - fromM) + 4 * room;
    const tallM = Math.max(LEAST_M, highM - lowM) + 2 * room;
    const inner = width - LEFT - RIGHT;
    const perM = Math.min(inner / wideM, mostHigh / tallM);
    const leftM = (fromM + toM) / 2 - inner / perM / 2;
    const bottom = TOP + tallM * perM;
    const { x, y } = elevation;
    const shown = (field: string, si: number): number => {
        const { per, plus } = fields[field] ?? { per: 1, plus: 0 };
        return si * per + plus;
    };
    const axis = (field: string, low: number, high: number): Axis =>
        between(fields[field], field, shown(field, low), shown(field, high));
    return {
        width,
        height: Math.ceil(bottom + FOOT),
        perM,
        left: LEFT,
        leftM,
        right: width - RIGHT,
        top: TOP,
        bottom,
        lowM,
        across: axis(x.field, leftM, leftM + inner / perM),
        up: axis(y.field, lowM, lowM + tallM),
    };
}

export function acrossOn(laid: LaidElevation, acrossM: number): number {
    return laid.left + (acrossM - laid.leftM) * laid.perM;
}

export function upOn(laid: LaidElevation, upM: number): number {
    return laid.bottom - (upM - laid.lowM) * laid.perM;
}

/** An arrow from where a load acts, longer where it is stronger, no further than the picture. */
export interface Arrow {
    readonly from: readonly [number, number];
    readonly to: readonly [number, number];
    /** Unit vector on the picture; nothing of a load of nothing. */
    readonly along: readonly [number, number] | undefined;
}

const LEAST_ARROW = 20;
const MOST_ARROW = 70;

export function arrowsOf(elevation: Elevation, laid: LaidElevation): Arrow[] {
    const sizes = elevation.loads.map(load => Math.hypot(load.across, load.up));
    const most = Math.max(0, ...sizes);
    return elevation.loads.map((load, k) => {
        const from = [acrossOn(laid, load.at[0]), upOn(laid, load.at[1])] as const;
        const size = sizes[k] ?? 0;
        if (!(size > 0)) {
            return { from, to: from, along: undefined };
        }
        const along = [load.across / size, -load.up / size] as const;
        const wanted = LEAST_ARROW + (MOST_ARROW * size) / most;
        if (along[1] > 0 && from[1] + wanted * along[1] > laid.bottom) {
            // What presses on the ground ends there.
            const start = [from[0] - wanted * along[0], from[1] - wanted * along[1]] as const;
            return { from: start, to: from, along };
        }
        const long = fitted(laid, from, along, wanted);
        return { from, to: [from[0] + long * along[0], from[1] + long * along[1]], along };
    });
}

function fitted(
    laid: LaidElevation,
    [x, y]: readonly [number, number],
    [ux, uy]: readonly [number, number],
    long: number,
): number {
    let most = long;
    if (ux > 1e-9) most = Math.min(most, (laid.right - x) / ux);
    if (ux < -1e-9) most = Math.min(most, (x - laid.left) / -ux);
    if (uy < -1e-9) most = Math.min(most, (y - 2) / -uy);
    return Math.max(10, most);
}
