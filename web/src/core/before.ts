import { lengthWords, wayWords } from './lengths';
import type { DrawnFan, Scene } from './scene';
import { dot, length, minus, type Point } from './space';
import type { AnswerDocument } from './wire';

type Fields = AnswerDocument['fields'];

/** Near enough to stand in the same place, m, and to look the same way, radians. */
const SAME_M = 1e-6;
const SAME_RAD = 1e-6;

/** A thing of a rig that stands elsewhere than before, looks elsewhere, came or went. */
export interface Shift {
    readonly id: string;
    readonly kind: 'moved' | 'turned' | 'new' | 'gone';
    /** Where it was, or where it is where it was not before. */
    readonly from: Point;
    readonly to: Point;
    readonly farM: number;
    readonly turnRad: number;
    /** As it was, where it is a fan; as it is, of a new one. */
    readonly fan: DrawnFan | undefined;
}

interface Placed {
    readonly at: Point;
    readonly fan: DrawnFan | undefined;
}

/** What is not called so in a file. */
export const CENTRE = 'the centre of mass';

/** Everything that is otherwise placed, the farthest first; then what came, and what went. */
export function shiftsOf(was: Scene, is: Scene): Shift[] {
    const before = placesOf(was);
    const after = placesOf(is);
    const moved = [...after].flatMap(([id, to]): Shift[] => {
        const from = before.get(id);
        if (from === undefined) return [];
        const farM = length(minus(to.at, from.at));
        const turnRad = from.fan && to.fan ? angle(from.fan.push, to.fan.push) : 0;
        if (farM <= SAME_M && turnRad <= SAME_RAD) return [];
        const kind = farM > SAME_M ? 'moved' : 'turned';
        return [{ id, kind, from: from.at, to: to.at, farM, turnRad, fan: from.fan }];
    });
    const alone = (kind: 'new' | 'gone', [id, { at, fan }]: [string, Placed]): Shift => {
        return { id, kind, from: at, to: at, farM: 0, turnRad: 0, fan };
    };
    return [
        ...moved.sort((a, b) => b.farM - a.farM),
        ...[...after].filter(([id]) => !before.has(id)).map(each => alone('new', each)),
        ...[...before].filter(([id]) => !after.has(id)).map(each => alone('gone', each)),
    ];
}

function angle(a: Point, b: Point): number {
    return Math.acos(Math.min(1, Math.max(-1, dot(a, b) / (length(a) * length(b)))));
}

function placesOf(scene: Scene): Map<string, Placed> {
    return new Map([
        ...scene.fans.map((fan): [string, Placed] => [fan.id, { at: fan.at, fan }]),
        ...scene.parts.map(({ id, at }): [string, Placed] => [id, { at, fan: undefined }]),
        ...(scene.centre
            ? [[CENTRE, { at: scene.centre, fan: undefined }] satisfies [string, Placed]]
            : []),
    ]);
}

/** "40 mm" for a name beside it. */
export function shiftShort(shift: Shift, fields: Fields): string {
    switch (shift.kind) {
        case 'moved':
            return lengthWords(shift.farM, fields);
        case 'turned':
            return turnWords(shift.turnRad);
        case 'new':
        case 'gone':
            return shift.kind;
    }
}

/** "40 mm: 0 mm forward, 40 mm right, 0 mm up; turned by 5.0°". */
export function shiftWords(shift: Shift, fields: Fields): string {
    const turned = shift.turnRad > SAME_RAD ? `turned by ${turnWords(shift.turnRad)}` : '';
    return shift.kind === 'moved'
        ? [wayWords(shift.from, shift.to, fields), turned].filter(Boolean).join('; ')
        : turned || shift.kind;
}

function turnWords(rad: number): string {
    return `${((rad * 180) / Math.PI).toFixed(1)}°`;
}

/** Which things stand elsewhere now, came or went, in a sentence. */
export function movedWords(was: Scene, is: Scene): string {
    const shifts = shiftsOf(was, is).filter(({ id }) => id !== CENTRE);
    const words = (['moved', 'turned', 'new', 'gone'] as const).flatMap(kind => {
        const of = shifts.filter(shift => shift.kind === kind).map(({ id }) => id);
        return of.length > 0 ? [`${kind}: ${of.join(', ')}`] : [];
    });
    return words.length === 0 ? 'Nothing stands elsewhere' : words.join('; ');
}
